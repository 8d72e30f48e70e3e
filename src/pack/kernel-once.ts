import { type Kernel, loadKernel } from "../geometry/kernel.ts";

/** Loads the solid kernel when it is first asked for, and answers with the same one from then on. */
export function kernelOnce(): () => Promise<Kernel> {
  let loading: Promise<Kernel> | undefined;
  return () => {
    loading ??= loadKernel();
    return loading;
  };
}

import type { Kernel } from "../../geometry/kernel.ts";
import { type Solids, solidTasks } from "./solid-tasks.ts";

/** Does solid tasks in this thread; `keep` as solidTasks has it. */
export function solidsHere(kernel: () => Promise<Kernel>, keep?: "files"): Solids {
  let tasks: Promise<ReturnType<typeof solidTasks>> | undefined;
  return async (kind, asks) => {
    tasks ??= kernel().then((loaded) => solidTasks(loaded, keep));
    return (await tasks)[kind](asks);
  };
}

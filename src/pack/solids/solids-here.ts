import type { Kernel } from "../../geometry/kernel.ts";
import { type Solids, solidTasks } from "./solid-tasks.ts";

/** Does solid tasks in this thread. */
export function solidsHere(kernel: () => Promise<Kernel>): Solids {
  let tasks: Promise<ReturnType<typeof solidTasks>> | undefined;
  return async (kind, asks) => {
    tasks ??= kernel().then(solidTasks);
    return (await tasks)[kind](asks);
  };
}

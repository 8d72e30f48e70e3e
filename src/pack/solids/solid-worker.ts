/** A thread that does solid tasks, one after the other, for whoever started it. */
import { parentPort } from "node:worker_threads";
import { loadKernel } from "../../geometry/kernel.ts";
import { solidTasks } from "./solid-tasks.ts";
import type { Answered, Asked } from "./solids-aside.ts";

const tasks = loadKernel().then(solidTasks);

parentPort!.on("message", async ({ id, kind, asks }: Asked) => {
  try {
    // Of each kind the task takes what is asked of that kind.
    const gives = ((await tasks)[kind] as (given: unknown) => unknown)(asks);
    parentPort!.postMessage({ id, gives } satisfies Answered);
  } catch (error) {
    parentPort!.postMessage({ id, error } satisfies Answered);
  }
});

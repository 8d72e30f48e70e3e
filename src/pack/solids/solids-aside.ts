import { Worker } from "node:worker_threads";
import type { Solids, SolidTasks } from "./solid-tasks.ts";

/** A task as it is sent to the thread. */
export type Asked = { readonly id: number; readonly kind: keyof SolidTasks; readonly asks: unknown };

/** What the thread answers: what the task gave, or what went wrong. */
export type Answered = { readonly id: number; readonly gives?: unknown; readonly error?: unknown };

/** Solid tasks that are done in a thread of their own, and how that is ended. */
export type SolidsAside = { readonly solids: Solids; readonly end: () => Promise<void> };

/**
 * Starts a thread for solid tasks from a worker's file: what draws and writes goes on meanwhile. The thread doesn't keep the process alive, and a
 * thread that breaks rejects all that was asked of it.
 */
export function solidsAside(worker: URL): SolidsAside {
  const thread = new Worker(worker);
  const waiting = new Map<number, { done: (gives: never) => void; failed: (error: unknown) => void }>();
  let asked = 0;
  const broken = (error: unknown) => {
    for (const { failed } of waiting.values()) failed(error);
    waiting.clear();
  };
  thread.on("message", ({ id, gives, error }: Answered) => {
    const { done, failed } = waiting.get(id)!;
    waiting.delete(id);
    if (waiting.size === 0) thread.unref();
    if (error === undefined) done(gives as never);
    else failed(error);
  });
  thread.on("error", broken);
  thread.on("exit", () => broken(new Error("the thread for solids ended before its work was done")));
  thread.unref();
  const solids: Solids = (kind, asks) =>
    new Promise((done, failed) => {
      const id = asked++;
      waiting.set(id, { done, failed });
      thread.ref();
      thread.postMessage({ id, kind, asks } satisfies Asked);
    });
  return {
    solids,
    end: async () => {
      await thread.terminate();
    },
  };
}

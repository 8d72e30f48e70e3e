/** Where a command's words go, and the environment it runs in. */
export type Outlets = {
  readonly stderrTty: boolean;
  readonly stdoutTty: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
};

/**
 * Which words are coloured: messages by what standard error is, results by what standard output is, each only on a terminal.
 * None where NO_COLOR is set to anything but nothing, or where the terminal says that it is dumb.
 */
export function colouring({ stderrTty, stdoutTty, env }: Outlets): { messages: boolean; results: boolean } {
  const plain = (env.NO_COLOR ?? "") !== "" || env.TERM === "dumb";
  return { messages: stderrTty && !plain, results: stdoutTty && !plain };
}

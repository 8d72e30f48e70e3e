import { describe, expect, it } from "vitest";
import { colouring } from "../../src/commands/colouring.ts";
import { type Common, consoleFor, type Surroundings } from "../../src/commands/console.ts";

/** A console in made-up surroundings, with all that it wrote and a clock to set. */
function tried(common: Partial<Common>, around: Partial<Surroundings>) {
  const clock = { at: 5000 };
  const [errors, results]: [string[], string[]] = [[], []];
  const console = consoleFor(
    { json: false, quiet: false, ...common },
    {
      ...{ stderrTty: false, stdoutTty: false, env: {}, now: () => clock.at },
      ...{ toStderr: (text: string) => errors.push(text), toStdout: (text: string) => results.push(text) },
      ...around,
    },
  );
  return { console, clock, errors, results };
}

const both = { stderrTty: true, stdoutTty: true };

describe("colours", () => {
  it.each([
    [{ ...both, env: {} }, true, true],
    [{ stderrTty: true, stdoutTty: false, env: {} }, true, false],
    [{ stderrTty: false, stdoutTty: true, env: {} }, false, true],
    [{ stderrTty: false, stdoutTty: false, env: {} }, false, false],
    [{ ...both, env: { NO_COLOR: "1" } }, false, false],
    [{ ...both, env: { NO_COLOR: "" } }, true, true],
    [{ ...both, env: { TERM: "dumb" } }, false, false],
    [{ ...both, env: { TERM: "xterm" } }, true, true],
  ])("with %j are for messages: %s, for results: %s", (outlets, messages, results) => {
    expect(colouring(outlets)).toEqual({ messages, results });
    const { console } = tried({}, outlets);
    expect(console.colour.red("x").includes("\u001b")).toBe(messages);
    expect(console.ink.red("x").includes("\u001b")).toBe(results);
  });
});

describe("the progress line", () => {
  it("shows on a terminal, and only once a job has taken more than a second", () => {
    const { console, clock, errors, results } = tried({}, { stderrTty: true });
    console.progress("1 of 3");
    clock.at = 6000;
    console.progress("2 of 3");
    expect(errors).toEqual([]);
    clock.at = 6001;
    console.progress("3 of 3");
    expect(errors).toEqual(["\r\u001b[K3 of 3"]);
    expect(results).toEqual([]);
  });

  it.each<[string, Partial<Common>, Partial<Surroundings>]>([
    ["with --quiet", { quiet: true }, both],
    ["into a file or a pipe, even beside a terminal", {}, { stdoutTty: true }],
  ])("never shows %s", (_, common, around) => {
    const { console, clock, errors, results } = tried(common, around);
    clock.at = 60_000;
    console.progress("2 of 3");
    expect([errors, results]).toEqual([[], []]);
  });
});

describe("messages and results", () => {
  it("part: messages to standard error and not with --quiet, results to standard output always", () => {
    const loud = tried({}, {});
    loud.console.say("word");
    loud.console.print("number\n");
    expect([loud.errors, loud.results]).toEqual([["word\n"], ["number\n"]]);
    const quiet = tried({ quiet: true }, {});
    quiet.console.say("word");
    quiet.console.print("number\n");
    expect([quiet.errors, quiet.results]).toEqual([[], ["number\n"]]);
  });
});

import { type Look, mm, unless } from "./at-odds.ts";

/** A tuning that breaks a string: its stress at pitch is over the strength of its wire. */
export const wiresAtOdds: Look = (of, { wires }) =>
  wires.flatMap(({ name, stress, strength, retuned }) => {
    // Stress goes with the square of pitch and length, whatever the wire's diameter.
    const share = Math.sqrt(strength / stress);
    const semitones = Math.ceil(-12 * Math.log2(share));
    const shorter = retuned ? "" : `, or set string.length under ${mm(of("string.length") * share)}`;
    // A string that was tuned up is at fault itself, whatever else the order changes.
    const ids = retuned ? [] : ["string.length", "pitch.standard"];
    return unless(stress <= strength, ids, {
      place: `strings.${name}`,
      found: `${name} tuned to ${Math.round(stress)} MPa`,
      allowed: `less than the ${Math.round(strength)} MPa that its wire breaks at`,
      hint: `tune ${name} at least ${semitones} semitone${semitones === 1 ? "" : "s"} lower${shorter}; a thinner wire changes nothing`,
    });
  });

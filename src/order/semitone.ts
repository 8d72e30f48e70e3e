/** 2^(k/12) for k = 0 to 11, the nearest double to each. */
const withinOctave = [
  1,
  1.0594630943592953,
  1.122462048309373,
  1.189207115002721,
  1.2599210498948732,
  1.3348398541700344,
  Math.SQRT2,
  1.4983070768766815,
  1.5874010519681996,
  1.681792830507429,
  1.7817974362806785,
  1.887748625363387,
] as const;

/**
 * 2^(n/12), the ratio of two pitches n equal-tempered semitones apart; `n` a whole number.
 *
 * The one place for fractional powers of two: the language's own power function differs in its last bit from one
 * version to the next, a table and doubling do not.
 */
export function semitone(n: number): number {
  const octave = Math.floor(n / 12);
  const scale = octave >= 0 ? 2 ** octave : 1 / 2 ** -octave;
  return withinOctave[n - 12 * octave]! * scale;
}

/** Tolerances of what is worked out (G: what a careful hand holds at the bench), mm and degrees; N, MPa, Hz, g, cm³ and N·mm as reported. */
export const usual = {
  length: 0.1,
  angle: 0.1,
  force: 0.5,
  stress: 5,
  pitch: 0.01,
  mass: 1,
  lightMass: 0.1,
  volume: 0.5,
  moment: 30,
  balance: 1,
};

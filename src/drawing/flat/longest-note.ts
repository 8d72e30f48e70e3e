/** How many letters a line of notes beside a drawing has at most; what is longer goes on in the line under it. */
export const longestNote = 150;

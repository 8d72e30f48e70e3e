/** How the contents page looks: one column that reads on a phone, tables where there is room, plain black on paper. Colour carries no meaning of its own. */
export const contentsStyle = `:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 72rem; padding: 1rem; color: #1a1a1a; background: #fff; font: 1rem/1.45 system-ui, "Liberation Sans", Arial, sans-serif; }
h1 { margin: 0 0 0.25rem; font-size: 1.8rem; }
h2 { margin: 2rem 0 0.5rem; border-bottom: 2px solid #1a1a1a; font-size: 1.3rem; }
h3 { margin: 1.4rem 0 0.3rem; font-size: 1.05rem; }
a { color: #123f7a; }
.caution { border-left: 0.4rem solid #1a1a1a; padding: 0.4rem 0.8rem; background: #f2f2f2; }
nav a { display: inline-block; margin: 0 0.8rem 0.4rem 0; padding: 0.4rem 0; }
.pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 20rem), 1fr)); gap: 1rem; }
figure { margin: 0; border: 1px solid #999; padding: 0.5rem; break-inside: avoid; }
figure img { display: block; width: 100%; height: 14rem; object-fit: contain; }
figcaption { margin-top: 0.4rem; font-size: 0.9rem; overflow-wrap: anywhere; }
table { width: 100%; border-collapse: collapse; }
th, td { padding: 0.25rem 0.6rem 0.25rem 0; border-bottom: 1px solid #ccc; text-align: left; vertical-align: top; overflow-wrap: break-word; }
small { display: block; color: #444; }
thead { border-bottom: 2px solid #1a1a1a; }
tr.refuse td:first-child, tr.attend td:first-child { font-weight: bold; text-transform: uppercase; }
tr.refuse { background: #e4e4e4; }
tr.attend { background: #f4f4f4; }
@media (max-width: 45rem) {
  thead { display: none; }
  table, tbody, tr { display: block; }
  tr { border-bottom: 1px solid #999; padding: 0.5rem 0; }
  td { display: inline-block; border: 0; padding: 0.1rem 0.9rem 0.1rem 0; }
  td:empty { display: none; }
  td:first-child, td:last-child { display: block; }
  td:first-child { font-weight: bold; }
  td[data-label]::before { content: attr(data-label) ": "; color: #555; }
  figure img { height: auto; max-height: 16rem; }
}
@media print {
  body { max-width: none; padding: 0; font-size: 9pt; }
  nav { display: none; }
  a { color: inherit; text-decoration: none; }
  .pictures { grid-template-columns: repeat(3, 1fr); gap: 4mm; }
  figure img { height: 45mm; }
  tr, figure { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
  thead { display: table-header-group; }
}
`;

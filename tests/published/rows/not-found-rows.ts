import { NOTFOUND, type ReferenceRow } from "../reference-row";

export const ROWS_OF_NOT_FOUND: readonly ReferenceRow[] = [
  { id: "not-found.1", words: "ISO 10625 and ASABE S572 themselves", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.2", words: "136 in a university's text; a worked example of pressure and flow", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.3", words: "CV worked from printed pans; limits of CV", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.4", words: "the dollar spot equation in the paper, and a printed example", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.5", words: "a printed table of growth potential; nitrogen by month from it", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.6", words: "iron and temperature; rainfast table; lime split; aeration; half an inch, of a university", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.7", words: "Handbook 44 C itself; numbers of H-510; a gypsum example", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.8", words: "values of the Delta T chart", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.9", words: "the dollar spot equation in the paper, again", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.10", words: "136 in print; a worked square root of an extension service", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.11", words: "gpm at 40 psi by size of an extension service; three standards", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.12", words: "raw pans with a printed CV; limits of New Zealand and S341", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.13", words: "Fahrenheit spreads of growth; tables by place", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.14", words: "iron and temperature; rainfast hours by ingredient", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.15", words: "most active ingredient in a season, by ingredient", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
  { id: "not-found.16", words: "depth of compost; grid of Delta T; cycle and soak; a full and a part tank", source: "looked for and not found", status: "unmarked", omission: NOTFOUND },
];

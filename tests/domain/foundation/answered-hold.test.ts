import { expect, test } from "vitest";
import { type AnsweredHold, answerCovering, answeredHold, answerInDocument, readAnsweredHold, textOfAnsweredHold } from "#domain/foundation/answered-hold";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type FindingWords, hold, takeCare } from "#domain/foundation/finding";

const ON = "2026-04-14" as CalendarDate;
const WORDS: FindingWords = {
  rule: "phosphorus-without-need",
  source: "law",
  what: "Greenmere has phosphate, and the law asks for a test that shows a need.",
  figure: "No soil test of the last 36 months shows a need on Front.",
  toDo: "Test the soil first.",
  citation: "415 ILCS 65/5a",
  about: ["Greenmere", "Front"],
};
const HOLD = hold("license-holder", WORDS);
const answerTo = (answered: AnsweredHold | null) => ({ rule: WORDS.rule, answered });

test("an answer keeps the words of its hold and the day, as a text that reads back the same", () => {
  const answered = answeredHold(HOLD, ON);
  expect(answered).toEqual({ rule: WORDS.rule, what: WORDS.what, figure: WORDS.figure, citation: WORDS.citation, about: ["Greenmere", "Front"], on: ON });
  expect(readAnsweredHold(textOfAnsweredHold(answered))).toEqual(answered);
  expect(readAnsweredHold("")).toBeNull();
  const bare = answeredHold(hold("license-holder", { rule: "a", source: "law", what: "B.", about: [] }), ON);
  expect(textOfAnsweredHold(bare)).toBe('{"rule":"a","what":"B.","figure":null,"citation":null,"about":[],"on":"2026-04-14"}');
});

test("an answer covers its own hold on its own day", () => {
  const given = answerTo(answeredHold(HOLD, ON));
  expect(answerCovering(HOLD, ON, [given])).toBe(given);
  expect(answerCovering(hold("license-holder", { ...WORDS, toDo: "Look again." }), ON, [given])).toBe(given);
});

test("a hold of the same rule about another product, lawn, figure, law or day is covered by none of it", () => {
  const given = [answerTo(answeredHold(HOLD, ON))];
  const others: readonly Partial<FindingWords>[] = [
    { about: ["Other Feed", "Front"] },
    { about: ["Greenmere", "Back"] },
    { what: "Other Feed has phosphate, and the law asks for a test that shows a need." },
    { figure: "The soil test of 2026-03-01 shows enough phosphorus on Front." },
    { citation: "another act" },
    { rule: "another-rule" },
  ];
  expect(others.map((other) => answerCovering(hold("license-holder", { ...WORDS, ...other }), ON, given))).toEqual(others.map(() => undefined));
  expect(answerCovering(HOLD, "2026-04-15" as CalendarDate, given)).toBeUndefined();
  expect(answerCovering(HOLD, null, given)).toBeUndefined();
});

test("only a hold that a license holder may answer is covered, and never by an answer that does not say what it was given to", () => {
  const given = [answerTo(answeredHold(HOLD, ON))];
  expect([hold("nobody", WORDS), hold("office", WORDS), takeCare(WORDS)].map((one) => answerCovering(one, ON, given))).toEqual([undefined, undefined, undefined]);
  expect(answerCovering(HOLD, ON, [answerTo(null), { rule: WORDS.rule }])).toBeUndefined();
});

test("in a document an answer stands beside the hold of its words; in one from before words were kept, of its rule", () => {
  const given = answerTo(answeredHold(HOLD, ON));
  const other = hold("license-holder", { ...WORDS, about: ["Greenmere", "Back"] });
  expect([answerInDocument(HOLD, [given]), answerInDocument(other, [given])]).toEqual([given, undefined]);
  const old = { rule: WORDS.rule };
  expect([answerInDocument(HOLD, [old]), answerInDocument(other, [old]), answerInDocument(hold("office", WORDS), [old])]).toEqual([old, old, undefined]);
  expect(answerInDocument(hold("license-holder", { ...WORDS, rule: "another-rule" }), [old])).toBeUndefined();
});

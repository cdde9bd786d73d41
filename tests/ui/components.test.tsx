import { describe, expect, test } from "vitest";
import { Amount } from "#ui/amount";
import { AmountField } from "#ui/amount-field";
import { BlockedButton } from "#ui/blocked-button.client";
import { Button, LinkButton } from "#ui/button";
import { CheckboxRows, RadioRows } from "#ui/choice-rows";
import { DataTable } from "#ui/data-table.client";
import { ErrorSummary } from "#ui/error-summary.client";
import { Finding } from "#ui/finding";
import { FindingGroup } from "#ui/finding-group";
import { PasswordField } from "#ui/password-field.client";
import { Progress } from "#ui/progress";
import { ReadBack } from "#ui/read-back";
import { ThemeSwitch, deskThemes } from "#ui/theme-switch";
import { Table } from "#ui/table";
import { TextField } from "#ui/text-field";
import { TopBar } from "#ui/top-bar";
import { type VisitState, VisitMark, visitWords } from "#ui/visit-mark";
import { HowWorkedOut, WorkedOut } from "#ui/working";
import { sampleWorking, sampleWorkings } from "../../app/ui/gallery/sample-workings";
import { compareSortValues, matchesFilter } from "../../app/ui/data-table-order";
import { markupOf, tableRowsOf, tagsOf, textOf } from "./read-markup";

describe("fields", () => {
  test("a field ties hint and error to its control, and says that it is wrong", () => {
    const markup = markupOf(<TextField name="zip" label="ZIP" hint="Five figures" error="It has four." />);
    const input = tagsOf(markup).find((tag) => tag.name === "input");
    expect(input?.attributes["aria-describedby"]).toBe("zip-hint zip-error");
    expect(input?.attributes["aria-invalid"]).toBe("true");
    expect(tagsOf(markup).find((tag) => tag.name === "label")?.attributes.for).toBe("zip");
  });

  test("a field without hint and error refers to nothing", () => {
    const input = tagsOf(markupOf(<TextField name="zip" label="ZIP" />)).find((tag) => tag.name === "input");
    expect(input?.attributes).not.toHaveProperty("aria-describedby");
    expect(input?.attributes).not.toHaveProperty("aria-invalid");
  });

  const ounces = [
    { value: "fl-oz", word: "fl oz", explained: "by volume" },
    { value: "oz-wt", word: "oz wt", explained: "by weight" },
  ] as const;

  test("a unit without a default must be chosen; with one it stands there", () => {
    const open = markupOf(<AmountField label="Used" number={{ name: "n" }} unit={{ name: "u" }} units={ounces} />);
    expect(open).toContain('<option value="">Choose a unit</option>');
    const chosen = markupOf(<AmountField label="Used" number={{ name: "n" }} unit={{ name: "u", defaultValue: "oz-wt" }} units={ounces} />);
    expect(chosen).not.toContain("Choose a unit");
    expect(chosen).toContain('<option value="oz-wt" selected="">oz wt, by weight</option>');
  });

  test("one unit is a word and is sent along", () => {
    const markup = markupOf(<AmountField label="Water" number={{ name: "n" }} unit={{ name: "u" }} units={[{ value: "gal", word: "gal" }]} />);
    expect(tagsOf(markup).filter((tag) => tag.attributes.type === "hidden").map((tag) => tag.attributes)).toEqual([
      { type: "hidden", name: "u", value: "gal" },
    ]);
  });

  test("asked which ounce, neither is chosen beforehand", () => {
    const markup = markupOf(<AmountField label="Left" number={{ name: "n" }} unit={{ name: "u" }} units={ounces} askWhichOunce />);
    const radios = tagsOf(markup).filter((tag) => tag.attributes.type === "radio");
    expect(radios.map((tag) => tag.attributes.value)).toEqual(["fl-oz", "oz-wt"]);
    expect(radios.some((tag) => "checked" in tag.attributes)).toBe(false);
    expect(textOf(markup)).toContain("Which ounce?");
  });

  test("the first row carries the group's id, and what is chosen is checked", () => {
    const choices = ["a", "b", "c"].map((value) => ({ value, word: value }));
    const radios = tagsOf(markupOf(<RadioRows name="r" label="R" choices={choices} defaultValue="b" />)).filter((tag) => tag.name === "input");
    expect(radios.map((tag) => [tag.attributes.id, "checked" in tag.attributes])).toEqual([["r", false], ["r-b", true], ["r-c", false]]);
    const boxes = tagsOf(markupOf(<CheckboxRows name="c" label="C" choices={choices} defaultValues={["a", "c"]} />)).filter((tag) => tag.name === "input");
    expect(boxes.map((tag) => "checked" in tag.attributes)).toEqual([true, false, true]);
  });

  test("a password is hidden until shown", () => {
    const input = tagsOf(markupOf(<PasswordField name="p" label="P" autoComplete="new-password" />)).find((tag) => tag.name === "input");
    expect(input?.attributes).toMatchObject({ type: "password", autoComplete: "new-password" });
  });

  test("the summary counts, leads to each field, and is not there without errors", () => {
    const markup = markupOf(<ErrorSummary errors={[{ fieldId: "a", sentence: "Type the lot" }, { fieldId: "b", sentence: "Choose" }]} attempt={1} />);
    expect(textOf(markup)).toContain("2 answers");
    expect(tagsOf(markup).filter((tag) => tag.name === "a").map((tag) => tag.attributes.href)).toEqual(["#a", "#b"]);
    expect(markupOf(<ErrorSummary errors={[]} attempt={0} />)).toBe("");
  });
});

describe("things to press", () => {
  test("a button is no submit unless said so, and pending it says what happens", () => {
    expect(tagsOf(markupOf(<Button>Undo</Button>))[0]?.attributes.type).toBe("button");
    const pending = markupOf(<Button pendingWords="Writing">Write</Button>);
    expect(textOf(pending)).toBe("Writing…");
    expect(tagsOf(pending)[0]?.attributes["aria-disabled"]).toBe("true");
  });

  test("a blocked button keeps its words, says what is missing, and still sends without scripts", () => {
    const markup = markupOf(<BlockedButton missing="Wind is missing" missingId="wind">Write the record</BlockedButton>);
    const [button] = tagsOf(markup);
    expect(button?.attributes).toMatchObject({ type: "submit", "aria-disabled": "true" });
    expect(markup).toContain(`id="${button?.attributes["aria-describedby"] ?? "none"}">Wind is missing`);
    expect(textOf(markup)).toContain("Write the record");
  });

  test("a link that looks like a button is a link", () => {
    expect(tagsOf(markupOf(<LinkButton href="/today">Today</LinkButton>))[0]).toMatchObject({ name: "a", attributes: { href: "/today" } });
  });

  test("one key of the theme switch is down", () => {
    const keys = tagsOf(markupOf(<ThemeSwitch options={deskThemes} chosen="dark" action="/theme" />)).filter((tag) => tag.name === "button");
    expect(keys.map((tag) => [tag.attributes.value, tag.attributes["aria-pressed"]])).toEqual([["light", "false"], ["dark", "true"], ["system", "false"]]);
  });

  test("the bar marks the place that the page belongs to", () => {
    const places = [{ name: "Today", href: "/today" }, { name: "Weeks", href: "/weeks" }];
    const markup = markupOf(<TopBar brand="Halfpass" homeHref="/" places={places} currentHref="/weeks" contentsHref="/contents" />);
    const current = tagsOf(markup).filter((tag) => tag.attributes["aria-current"] === "page");
    expect(current.map((tag) => tag.attributes.href)).toEqual(["/weeks"]);
  });
});

describe("findings and marks", () => {
  test("a finding says level, what, figure, what to do, source, in this order", () => {
    const text = textOf(markupOf(<Finding level="hold" what="Too hot." figure="84; below 80." toDo="Move it." source="label" />));
    expect(text).toBe("Hold. Too hot.84; below 80. Move it. label");
  });

  test("an answered hold says who, with which license, when and why", () => {
    const answer = { by: "Dana Quill", license: "license 40", at: "7:40 am", reason: "New seeding." };
    const text = textOf(markupOf(<Finding level="answered" what="Phosphorus." source="law" answer={answer} />));
    expect(text).toContain("Dana Quill, license 40, 7:40 am: New seeding.");
  });

  test("a group says its cause and count once and lists every item", () => {
    const items = ["one", "two"].map((words) => ({ id: words, words }));
    const text = textOf(markupOf(<FindingGroup level="take-care" cause="Notice is due" count="2 stops" source="law" items={items} />));
    expect(text).toContain("Take care. Notice is due: 2 stops.");
    expect(text).toContain("onetwo");
  });

  test("the eight marks of a visit are eight shapes", () => {
    const shapes = (Object.keys(visitWords) as VisitState[]).map((state) => {
      const markup = markupOf(<VisitMark state={state} word="spoken" />);
      expect(markup).toContain(`aria-label="${visitWords[state]}"`);
      return markup.replace(/^<svg[^>]*>/, "");
    });
    expect(new Set(shapes).size).toBe(8);
  });
});

describe("words and tables", () => {
  test("an amount never parts from its unit", () => {
    const text = textOf(markupOf(<Amount figure="8" unit="fl oz" />));
    expect(text).toBe("8\u00a0fl\u00a0oz");
  });

  test("a fraction is set with the fraction slash", () => {
    expect(textOf(markupOf(<Amount figure="2" fraction={{ over: 1, under: 3 }} unit="oz wt" />))).toContain("21\u20443");
  });

  test("a fact that can be changed is a link that says what it changes", () => {
    const markup = markupOf(<ReadBack parts={["You put down ", { fact: "8.1 lb", href: "#amount", of: "amount" }, "."]} />);
    expect(tagsOf(markup).find((tag) => tag.name === "a")?.attributes).toMatchObject({ href: "#amount", "aria-label": "8.1 lb: change the amount" });
  });

  test("progress of unknown length has no value", () => {
    const bar = (done?: { count: number; of: number }) =>
      tagsOf(markupOf(<Progress id="p" name="Fitting" standing="14 s" actions={null} {...(done === undefined ? {} : { done })} />)).find((tag) => tag.name === "progress");
    expect(bar()?.attributes).not.toHaveProperty("value");
    expect(bar({ count: 3, of: 9 })?.attributes).toMatchObject({ value: "3", max: "9" });
  });

  const columns = [{ id: "street", head: "Street" }, { id: "size", head: "Size", align: "figure" }] as const;

  test("a table keeps its rows and shows what is empty", () => {
    const rows = [{ id: "1", cells: { street: "Alder Ct", size: "12" } }, { id: "2", cells: { street: "Birch Ln" } }];
    expect(tableRowsOf(markupOf(<Table caption="T" columns={columns} rows={rows} />))).toEqual([["Alder Ct", "12"], ["Birch Ln", ""]]);
    expect(markupOf(<Table caption="T" columns={columns} rows={[]} empty="Nothing yet" />)).toContain("Nothing yet");
  });

  const rows = [9, 100, 25].map((size, index) => ({
    id: String(index),
    cells: { street: `Elm St ${size}`, size: { text: size.toLocaleString("en-US"), sortBy: size } },
  }));

  test.each([
    [{ id: "size" }, ["9", "25", "100"]],
    [{ id: "size", descending: true }, ["100", "25", "9"]],
    [{ id: "street" }, ["9", "25", "100"]],
  ])("a data table sorted by %o sorts by value, and says so at its head", (sortedBy, sizes) => {
    const markup = markupOf(<DataTable id="d" caption="D" columns={columns} rows={rows} noun={["row", "rows"]} sortedBy={sortedBy} empty="" />);
    expect(tableRowsOf(markup).map((row) => row[1])).toEqual(sizes);
    const sorted = tagsOf(markup).filter((tag) => "aria-sort" in tag.attributes);
    expect(sorted.map((tag) => tag.attributes["aria-sort"])).toEqual(["descending" in sortedBy ? "descending" : "ascending"]);
    expect(textOf(markup)).toContain("3 rows");
  });

  test("no row at all shows what to do instead of a table", () => {
    const markup = markupOf(<DataTable id="d" caption="D" columns={columns} rows={[]} noun={["row", "rows"]} empty={<p>Add one</p>} />);
    expect(markup).toBe("<p>Add one</p>");
  });

  test("numbers go by size, words as a person orders them, and accents don't matter when looking", () => {
    expect(["Elm 10", "Elm 9", "Ölweg 1"].toSorted(compareSortValues)).toEqual(["Elm 9", "Elm 10", "Ölweg 1"]);
    expect([3, 20, 100].toSorted(compareSortValues)).toEqual([3, 20, 100]);
    expect(compareSortValues(5, "5")).toBeLessThan(0);
    expect(compareSortValues("5", 5)).toBeGreaterThan(0);
    expect(matchesFilter("Ölweg 1, Sol Brandt", "brandt olw")).toBe(true);
    expect(matchesFilter("Ölweg 1, Sol Brandt", "brandt elm")).toBe(false);
    expect(matchesFilter("anything", "  ")).toBe(true);
  });
});

describe("how a number is worked out", () => {
  test("rule, figures with their origin, steps in order, result and source stand there in this order", () => {
    const { formula, inputs, steps, result, source } = sampleWorking;
    const text = textOf(markupOf(<WorkedOut working={sampleWorking} />));
    const parts = [formula, ...inputs.flatMap(({ name, figure, from }) => [name, figure, ...(from === undefined ? [] : [from])]), ...steps, result, source];
    let from = 0;
    for (const part of parts) {
      expect(text.indexOf(part, from)).toBeGreaterThanOrEqual(from);
      from = text.indexOf(part, from) + part.length;
    }
  });

  test("it opens without scripts by words that say of what it is, and on paper stays as it was left", () => {
    const tags = tagsOf(markupOf(<HowWorkedOut of="13½ lb in all" workings={sampleWorkings} />));
    expect(tags.slice(0, 2).map(({ name }) => name)).toEqual(["details", "summary"]);
    expect(tags[0]?.attributes).toMatchObject({ "data-on-paper": "as-left" });
    expect(tags[0]?.attributes).not.toHaveProperty("open");
    expect(textOf(markupOf(<HowWorkedOut of="13½ lb in all" workings={sampleWorkings} />))).toContain("How 13½ lb in all is worked out");
    expect(textOf(markupOf(<HowWorkedOut workings={sampleWorkings} />))).toContain("How this is worked out");
  });

  test("several say each of what they are, one alone does not repeat it, and none open nothing", () => {
    const said = (count: number) => textOf(markupOf(<HowWorkedOut workings={sampleWorkings.slice(0, count)} />)).split(sampleWorking.title).length - 1;
    expect(said(2)).toBe(1);
    expect(said(1)).toBe(0);
    expect(markupOf(<HowWorkedOut workings={[]} />)).toBe("");
  });

  test("two figures of one name are told apart", () => {
    const twice = { ...sampleWorking, inputs: [{ name: "Rate", figure: "1 lb" }, { name: "Rate", figure: "2 lb" }] };
    expect(textOf(markupOf(<WorkedOut working={twice} />))).toContain("Rate (2)");
  });
});

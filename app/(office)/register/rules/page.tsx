import { capitalized } from "#domain/foundation/capitalized";
import { type Metadata } from "next";
import Link from "next/link";
import { US_STATES } from "#domain/company/us-state";
import { PACKS_ON_FILE } from "#domain/rules/packs-on-file";
import { NOT_ON_FILE, RULE_WORDS, type RuleName, type RulePack } from "#domain/rules/rule-pack";
import { MarkedWords } from "#ui/marked-words";
import { PageHead } from "#ui/page-head";
import { JumpLinks, Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { pageFor } from "../../page-for";
import { STANDING_WORDS, valueWords } from "./rule-words";

export const metadata: Metadata = { title: "Rules on file" };

function stateName({ state }: RulePack): string {
  return US_STATES[state].name;
}

/** What is on file of each state's law, entry by entry: its words, where they are written, and how they were come by. */
export default async function RulesPage() {
  await pageFor("register/list-register");
  return (
    <>
      <PageHead
        above={<Link href="/register">Register</Link>}
        title="Rules on file"
        sentence="What checks and papers go by. What is not on file is never assumed: look it up and go by that."
      />
      <JumpLinks sections={PACKS_ON_FILE.map((pack) => ({ id: pack.state, name: stateName(pack) }))} />
      <Stack gap={6}>
        {PACKS_ON_FILE.map((pack) => (
          <Section key={pack.state} id={pack.state} name={stateName(pack)} aside={`Edition ${pack.edition}`}>
            <Stack gap={3}>
              <p>{pack.leadAgency}.</p>
              <Table
                caption={`Rules of ${stateName(pack)}`}
                captionSpoken
                columns={[
                  { id: "rule", head: "Rule" },
                  { id: "says", head: "What it says" },
                  { id: "citation", head: "Where it is written" },
                  { id: "standing", head: "How it was come by" },
                ]}
                rows={(Object.keys(pack.facts) as readonly RuleName[]).map((name) => ({ id: name, cells: cellsOf(pack, name) }))}
              />
            </Stack>
          </Section>
        ))}
      </Stack>
    </>
  );
}

function cellsOf({ facts }: RulePack, name: RuleName) {
  const fact = facts[name];
  const rule = capitalized(RULE_WORDS[name]);
  if (!fact.onFile) {
    const words = capitalized(NOT_ON_FILE);
    return { rule, says: <MarkedWords level="take-care">{words}</MarkedWords>, citation: fact.whereToLook, standing: STANDING_WORDS[fact.standing] };
  }
  const lines = valueWords(name, fact.value);
  const says = (
    <Stack gap={1}>
      {lines.length === 1 ? <p>{lines[0]}</p> : <Lines lines={lines} />}
      {fact.remark !== undefined && (
        <Text size="small" tone="second">
          {fact.remark}
        </Text>
      )}
    </Stack>
  );
  return { rule, says, citation: fact.citation, standing: STANDING_WORDS[fact.standing] };
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  return (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

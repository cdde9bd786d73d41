import { Amount } from "#ui/amount";
import { Button, LinkButton } from "#ui/button";
import { BlockedButton } from "#ui/blocked-button.client";
import { Code } from "#ui/code";
import { Columns } from "#ui/columns";
import { Dialog } from "#ui/dialog.client";
import { Disclosure } from "#ui/disclosure";
import { KeyValueList } from "#ui/key-value-list";
import { Quote, QuotedWords } from "#ui/quote";
import { ReadBack } from "#ui/read-back";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { SubmitButton } from "#ui/submit-button.client";
import { Text } from "#ui/text";
import { ContentsList } from "#ui/top-bar";
import { HowWorkedOut, WorkedOut } from "#ui/working";
import { ThemeSample } from "#ui/gallery/theme-sample.client";
import { sampleWorking, sampleWorkings } from "./sample-workings";

/** Type, amounts, quotes, codes, read-back, workings. */
export function WordsPart() {
  return (
    <Section id="words" name="Words and figures">
      <Columns split="two">
        <Sheet>
          <Stack gap={4}>
            <Text size="title">Tuesday, April 14</Text>
            <Text size="head">Truck 2, Ray</Text>
            <Text>3 trucks, 27 stops. Body text is set for a line of at most 68 letters, so that the eye finds the next.</Text>
            <Text size="small" tone="second">Label, section 4; read April 2, 2026</Text>
            <Quote source="Label of Ferrolane, directions for use, line 12">
              Do not apply when the air temperature is at or above 80 degrees, or when rain is expected within two hours.
            </Quote>
            <p>
              The label says <QuotedWords>keep spray off stone</QuotedWords>; the house rule is to blow off granules.
            </p>
            <p>
              Lot <Code>K207-118</Code>, gate code
            </p>
            <Code large>4471#</Code>
          </Stack>
        </Sheet>
        <Stack gap={5}>
          <Sheet>
            <Row gap="wide" align="top">
              <Amount figure="13½" unit="lb" of="Greenmere 32-0-6, into the spreader" tool="setting 14" />
              <Amount figure="8" unit="fl oz" of="Ferrolane, into 3 gal of water" tool="½-oz cup, 16 marks" />
              <Amount figure="2" fraction={{ over: 1, under: 3 }} unit="oz wt" tool="scale" />
            </Row>
          </Sheet>
          <Sheet>
            <ReadBack
              parts={[
                "You put down ",
                { fact: "8.1 lb", href: "#words", of: "amount" },
                " of Greenmere on ",
                { fact: "Front and Back", href: "#words", of: "lawns" },
                ", from ",
                { fact: "9:12", href: "#words", of: "start" },
                " to ",
                { fact: "9:31", href: "#words", of: "end" },
                ", wind ",
                { fact: "not taken", missing: true },
                ", under ",
                { fact: "Dana Quill", href: "#words", of: "license holder" },
                "’s license.",
              ]}
            />
          </Sheet>
          <KeyValueList
            pairs={[
              { key: "Size", value: "2,592 sq ft" },
              { key: "Measured", value: "wheel, April 2, 2026, by Ray Tolland" },
              { key: "Grass", value: "tall fescue and bluegrass, half and half, assumed" },
              { key: "Bewässerungssteuerung", value: "Nordwesthangbewässerungsstreifenventil 4" },
            ]}
          />
          <Sheet>
            <Stack gap={2}>
              <WorkedOut working={sampleWorking} />
              <HowWorkedOut of="13½ lb in all" workings={sampleWorkings} />
            </Stack>
          </Sheet>
        </Stack>
      </Columns>
    </Section>
  );
}

/** Buttons in every state, the theme switch, the dialog, the list of places. */
export function ActsPart() {
  return (
    <Section id="acts" name="Things to press">
      <Stack gap={6}>
        <Row>
          <Button kind="act">Print the packet</Button>
          <Button>Fit again</Button>
          <LinkButton href="#acts">Drawing</LinkButton>
          <LinkButton href="#acts" kind="act">Open Wednesday</LinkButton>
          <Button second="adds 9 min">Move both to Thu</Button>
          <Button kind="act" pendingWords="Writing">Write the record</Button>
          <Button>Rasenflächenbewässerungsanlage winterfest machen</Button>
        </Row>
        <Columns split="two">
          <Sheet>
            <form>
              <Stack gap={4}>
                <Button kind="act" foot>Start applying</Button>
                <BlockedButton foot missing="Missing: who applied it" missingId="who">Write the record</BlockedButton>
                <SubmitButton whilePending="Writing" foot>Write and go to the next stop</SubmitButton>
              </Stack>
            </form>
          </Sheet>
          <Stack gap={5}>
            <ThemeSample />
            <Row>
              <Dialog open="Leave this customer out" title="Leave Marta Ellery out of 2026?" close="Keep as it is">
                <p>6 open visits are taken off the plan. Nothing that is written changes.</p>
                <Button kind="act">Take 6 visits off</Button>
              </Dialog>
            </Row>
            <Disclosure name="How was this measured?">
              <p>By wheel along four sides and one tie, which closes to half a foot.</p>
            </Disclosure>
          </Stack>
        </Columns>
        <ContentsList
          places={[
            { name: "Today", href: "#today", question: "What happens today or tomorrow, may it, is everything printed?" },
            { name: "Weeks", href: "#weeks", question: "Which day does each open visit get?" },
            { name: "Register", href: "#register", question: "What was put down, and can we prove it?" },
          ]}
        />
      </Stack>
    </Section>
  );
}

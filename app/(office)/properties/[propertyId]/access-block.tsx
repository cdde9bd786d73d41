import { type PropertyOnFile } from "#application/properties/read-property";
import { MOWER_WORDS } from "#domain/properties/client-standing";
import { mowingDayWords } from "#domain/properties/mowing-day";
import { TANK_WATER_WORDS } from "#domain/properties/tank-water";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { LinkButton } from "#ui/button";
import { Code } from "#ui/code";
import { Columns } from "#ui/columns";
import { Disclosure } from "#ui/disclosure";
import { KeyValueList } from "#ui/key-value-list";
import { Row } from "#ui/row";
import { Sheet } from "#ui/sheet";

const NOT_ON_FILE = "Not on file";

/** Who mows and when, in one line. */
function mowingWords({ mowingDay, mowedBy }: PropertyOnFile): string {
  const who = mowedBy === null ? undefined : MOWER_WORDS[mowedBy];
  if (mowingDay === null) return who === undefined ? NOT_ON_FILE : `${who}; day not on file`;
  const day = mowingDayWords(mowingDay);
  return who === undefined ? `${day.charAt(0).toUpperCase()}${day.slice(1)}; by whom is not on file` : `${who}, ${day}`;
}

/** What one needs to know before one gets out of the truck: dog, gate, how to get in, whom to call. */
export function AccessBlock({ property }: { readonly property: PropertyOnFile }) {
  const { dogNote, gateCode, narrowestGate, accessNote, client } = property;
  const gate = narrowestGate === null ? "Width not on file" : formatQuantityIn(narrowestGate, "in", 1);
  const facts = [
    { key: "Dog", value: dogNote === null ? "None on file" : <strong>{dogNote}</strong> },
    { key: "Narrowest gate", value: gate },
    { key: "Getting in", value: accessNote ?? NOT_ON_FILE },
    { key: "Mowed", value: mowingWords(property) },
    { key: "Tank", value: TANK_WATER_WORDS[property.tankWater] },
  ];
  return (
    <Sheet>
      <Columns>
        <KeyValueList pairs={facts.slice(0, 3)} />
        <KeyValueList pairs={facts.slice(3)} />
        <Row fillOnPhone gap="wide">
          {gateCode !== null && (
            <Disclosure name="Show gate code">
              <Code large>{gateCode}</Code>
            </Disclosure>
          )}
          {client.phone !== null && (
            <LinkButton href={`tel:${client.phone.replace(/[^\d+]/g, "")}`} document second={client.phone}>
              Call {client.name}
            </LinkButton>
          )}
        </Row>
      </Columns>
    </Sheet>
  );
}

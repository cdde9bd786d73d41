import { type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { readBagSettings } from "#domain/equipment/bag-settings";
import { isSprayer, type SprayerKind } from "#domain/equipment/equipment-kind";
import { nominalSprayer } from "#domain/equipment/nominal-sprayer";
import { readTipDroplets } from "#domain/equipment/tip-droplets";
import { dropletsInWords } from "#domain/label/droplet-class";
import { formatRate } from "#domain/quantities/format-rate";
import { EmptyState } from "#ui/empty-state";
import { Section } from "#ui/section";
import { Table } from "#ui/table";

interface Props {
  readonly equipment: EquipmentOnFile;
}

/** What stands in where nobody has calibrated a piece of gear, and what was looked up of its tips. */
export function NominalSection({ equipment }: Props) {
  const { kind } = equipment;
  return (
    <>
      <Section id="nominal" name="Where nobody has calibrated it">
        {isSprayer(kind) ? <SprayerFigures equipment={equipment} kind={kind} /> : <BagTable equipment={equipment} />}
      </Section>
      {isSprayer(kind) && (
        <Section id="tips" name="Droplets of its tips">
          <TipTable equipment={equipment} />
        </Section>
      )}
    </>
  );
}

function SprayerFigures({ equipment: { nominal: typed, swath }, kind }: Props & { readonly kind: SprayerKind }) {
  const nominal = nominalSprayer({ kind, typed, swath });
  if (!nominal.ok) return <EmptyState sentence={`Nothing stands in for a calibration. ${nominal.refusal.sentence} Enter it under Change.`} />;
  const { rate, tip, statedBy } = nominal.value;
  return (
    <p>
      <strong>{formatRate(rate, "us")}</strong> stands in, by {statedBy}. The tip is {tip}. A mix ticket that uses it says to take care.
    </p>
  );
}

function TipTable({ equipment: { nominal } }: Props) {
  const charted = readTipDroplets("tipDroplets", nominal.tipDroplets);
  if (!charted.ok || charted.value.length === 0) {
    return <EmptyState sentence="No droplet class is on file. A label that wants one holds the mix ticket; look the tip up in its maker’s chart and enter it under Change." />;
  }
  return (
    <Table
      caption="Droplet classes of its tips"
      captionSpoken
      columns={[
        { id: "tip", head: "Tip" },
        { id: "pressure", head: "At" },
        { id: "droplets", head: "Droplets" },
      ]}
      rows={charted.value.map(({ tip, pressurePsi, dropletClass }) => ({
        id: `${tip} ${String(pressurePsi)}`,
        cells: { tip, pressure: `${String(pressurePsi)} psi`, droplets: dropletsInWords(dropletClass) },
      }))}
    />
  );
}

function BagTable({ equipment: { nominal } }: Props) {
  const settings = readBagSettings("bagSettings", nominal.bagSettings);
  if (!settings.ok || settings.value.length === 0) {
    return <EmptyState sentence="Nothing stands in for a calibration. Enter the settings that the bags state under Change, or calibrate it with each product." />;
  }
  return (
    <Table
      caption="Settings by the bags"
      captionSpoken
      columns={[
        { id: "product", head: "Product" },
        { id: "setting", head: "Setting" },
        { id: "rate", head: "Gives, by the bag" },
      ]}
      rows={settings.value.map(({ product, setting, rate }) => ({ id: product, cells: { product, setting, rate: formatRate(rate, "us") } }))}
    />
  );
}

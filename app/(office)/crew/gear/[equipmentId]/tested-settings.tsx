import { type CalibrationOnFile } from "#application/equipment/gear-on-file";
import { dialOrder, isSameSetting } from "#domain/equipment/dial";
import { formatRate } from "#domain/quantities/format-rate";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";

interface Props {
  /** The newest first. */
  readonly calibrations: readonly CalibrationOnFile[];
}

interface Tested {
  readonly key: string;
  readonly product: string;
  readonly operator: string;
  readonly settings: readonly CalibrationOnFile[];
}

/** Of each product and operator the latest test of each setting, in the order of the dial. */
function testedOf(calibrations: readonly CalibrationOnFile[]): readonly Tested[] {
  const groups = new Map<string, Tested>();
  for (const calibration of calibrations) {
    const { setup, operator, figures } = calibration;
    if (setup.kind !== "spreader") continue;
    const key = `${setup.product.id} ${operator.id}`;
    const before = groups.get(key) ?? { key, product: setup.product.name, operator: operator.name, settings: [] };
    const isKnown = before.settings.some((one) => isSameSetting(one.figures.setting ?? "", figures.setting ?? ""));
    groups.set(key, isKnown ? before : { ...before, settings: [...before.settings, calibration] });
  }
  return [...groups.values()].map((group) => ({
    ...group,
    settings: group.settings.toSorted((left, right) => dialOrder(left.figures.setting ?? "", right.figures.setting ?? "")),
  }));
}

/** Which settings of a spreader were tested with what, by whom: between two of them a ticket finds its own. */
export function TestedSettings({ calibrations }: Props) {
  const tested = testedOf(calibrations);
  if (tested.length === 0) return null;
  return (
    <Section id="tested" name="Settings that were tested">
      <Stack gap={4}>
        <Table
          caption="Settings that were tested, by product and operator"
          captionSpoken
          columns={[
            { id: "product", head: "Product" },
            { id: "operator", head: "By" },
            { id: "settings", head: "Settings, and what they give" },
          ]}
          rows={tested.map(({ key, product, operator, settings }) => ({
            id: key,
            cells: {
              product,
              operator,
              settings: settings.map(({ figures }) => `${figures.setting ?? ""}: ${formatRate(figures.rate, "us")}`).join("; "),
            },
          }))}
        />
        <p>From two settings on whose tests are still good, a mix ticket reads the setting for its rate off the line between them, never beyond them.</p>
      </Stack>
    </Section>
  );
}

import { Text } from "#ui/text";

/** Stands wherever amounts or limits from a label are shown. */
export function LabelIsTheLaw() {
  return (
    <Text size="small" tone="second">
      The label is the law. Rates, limits and amounts come from what was typed here: hold them against the container before you use them.
    </Text>
  );
}

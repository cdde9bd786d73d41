import { KeyValueList } from "#ui/key-value-list";
import { QuotedWords } from "#ui/quote";
import { Stack } from "#ui/stack";

/** How every fact is written, said once at the head of the form. */
export function LabelConvention() {
  return (
    <Stack gap={3}>
      <p>
        <strong>One way to write every fact.</strong> Nothing is filled in for you.
      </p>
      <KeyValueList
        pairs={[
          { key: "leave it empty", value: "nobody has read it yet; what needs it is held" },
          { key: "write none", value: "you looked, and the label says nothing" },
          { key: "else", value: "as printed, with its unit. The label’s own words may follow in quotation marks." },
        ]}
      />
      <p>
        For example: until dry <QuotedWords>Do not allow people or pets to enter until sprays have dried.</QuotedWords>
      </p>
    </Stack>
  );
}

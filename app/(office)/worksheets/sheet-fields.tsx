import { type InputRefusal } from "#domain/foundation/outcome";
import { RadioRows } from "#ui/choice-rows";
import { SelectField } from "#ui/select-field";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { type SheetField } from "./sheet";
import styles from "./worksheet.module.css";

interface FieldsProps {
  readonly fields: readonly SheetField[];
  readonly typed: Readonly<Record<string, string>>;
  readonly refusals: readonly InputRefusal[];
}

/** The fields of a worksheet in their order, those of a group together under its name. */
export function SheetFields({ fields, typed, refusals }: FieldsProps) {
  const groups = [...new Set(fields.map(({ group }) => group))];
  return groups.map((group) => {
    const own = fields.filter((field) => field.group === group);
    const rows = own.map((field) => (
      <SheetFieldOf key={field.name} field={field} value={typed[field.name] ?? ""} error={refusals.find(({ field: refused }) => refused === field.name)?.sentence} />
    ));
    if (group === undefined) return rows;
    return (
      <fieldset className={styles.group} key={group}>
        <legend>{group}</legend>
        <div className={styles.groupFields}>{rows}</div>
      </fieldset>
    );
  });
}

interface FieldProps {
  readonly field: SheetField;
  readonly value: string;
  readonly error: string | undefined;
}

function SheetFieldOf({ field, value, error }: FieldProps) {
  const { name, label, hint, optional = false } = field;
  const words = { name, label, error, optional, ...(hint === undefined ? {} : { hint }) };
  switch (field.look) {
    case "line":
      return <TextField {...words} defaultValue={value} width={field.width ?? "medium"} autoComplete="off" />;
    case "lines":
      return <TextAreaField {...words} defaultValue={value} rows={field.rows} autoComplete="off" spellCheck={false} />;
    case "rows":
      return <RadioRows {...words} choices={field.choices} defaultValue={value === "" ? field.choices[0].value : value} />;
    case "list":
      return <SelectField {...words} choices={field.choices} chooseWords={field.chooseWords} defaultValue={value} width="medium" />;
  }
}

"use client";

import { RadioRows, type RowChoice } from "#ui/choice-rows";
import { useChoice } from "../../action-form.client";

/** The roles to choose from, each with what it may do. */
export function RoleRows({ choices }: { readonly choices: readonly RowChoice[] }) {
  return (
    <RadioRows
      label="May"
      {...useChoice("role")}
      choices={choices}
    />
  );
}

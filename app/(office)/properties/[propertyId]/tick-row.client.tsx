"use client";

import { type ReactNode } from "react";
import { ChoiceRow } from "#ui/choice-rows";
import { useField } from "../../../action-form.client";

/** A yes or no of its own name in an ActionForm. */
export function TickRow({ name, hint, children }: { readonly name: string; readonly hint?: string; readonly children: ReactNode }) {
  const { error: _error, defaultValue, name: registeredName, ...registered } = useField(name);
  return (
    <ChoiceRow {...registered} type="checkbox" id={registeredName} name={registeredName} value="yes" hint={hint} defaultChecked={defaultValue === "yes"}>
      {children}
    </ChoiceRow>
  );
}

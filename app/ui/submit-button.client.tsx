"use client";

import { useFormStatus } from "react-dom";
import { Button, type ButtonProps } from "#ui/button";

export interface SubmitButtonProps extends Omit<ButtonProps, "type" | "pendingWords"> {
  /** The words while the form is on its way, for instance "Writing". */
  readonly whilePending: string;
}

/** The button that sends its form, and says so until the answer is here. */
export function SubmitButton({ whilePending, ...rest }: SubmitButtonProps) {
  const { pending, data } = useFormStatus();
  // Of several buttons in one form only the one that was pressed says so.
  const { name, value } = rest;
  const isPressed = pending && (name === undefined || value === undefined || data.get(name) === value);
  return <Button {...rest} type="submit" pendingWords={isPressed ? whilePending : undefined} />;
}

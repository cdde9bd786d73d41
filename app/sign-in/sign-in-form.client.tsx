"use client";

import { zodResolver } from "@hookform/resolvers/zod";
import { signIn } from "next-auth/react";
import { useState } from "react";
import { useForm } from "react-hook-form";
import { signInSchema } from "#application/accounts/sign-in.schema";
import { Button } from "#ui/button";
import { ErrorSummary } from "#ui/error-summary.client";
import { PasswordField } from "#ui/password-field.client";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";

/** Asks for the email address and the password; what was typed stays when they are not right. */
export function SignInForm({ next }: { readonly next: string }) {
  const [complaints, setComplaints] = useState<readonly { fieldId: string; sentence: string }[]>([]);
  const [attempt, setAttempt] = useState(0);
  const [isPending, setPending] = useState(false);
  const form = useForm({ resolver: zodResolver(signInSchema), defaultValues: { email: "", password: "" } });
  const { errors } = form.formState;
  const send = form.handleSubmit(async (typed) => {
    setPending(true);
    try {
      const answer = await signIn("credentials", { ...typed, redirect: false });
      if (answer?.ok === true) {
        // A whole new page, so that nothing of the signed-out one is kept.
        window.location.assign(next);
        return;
      }
      setComplaints([{ fieldId: "email", sentence: answer?.error ?? "The server did not answer. Try again." }]);
    } catch {
      setComplaints([{ fieldId: "email", sentence: "The server did not answer. Try again when the connection is back." }]);
    }
    setAttempt((before) => before + 1);
    setPending(false);
  });
  return (
    <form
      onSubmit={(event) => {
        void send(event);
      }}
      noValidate
      method="post"
    >
      <Stack gap={5}>
        <ErrorSummary errors={complaints} attempt={attempt} />
        <TextField label="Email address" type="email" autoComplete="username" {...form.register("email")} error={errors.email?.message} />
        <PasswordField label="Password" autoComplete="current-password" {...form.register("password")} error={errors.password?.message} />
        <div>
          <Button kind="act" type="submit" pendingWords={isPending ? "Signing in" : undefined}>
            Sign in
          </Button>
        </div>
        <noscript>Signing in needs scripts: the browser seals the session with one.</noscript>
      </Stack>
    </form>
  );
}

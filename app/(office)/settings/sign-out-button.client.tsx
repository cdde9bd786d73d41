"use client";

import { signOut } from "next-auth/react";
import { useState } from "react";
import { Button } from "#ui/button";

/** Ends the session in this browser. */
export function SignOutButton() {
  const [isPending, setPending] = useState(false);
  return (
    <Button
      pendingWords={isPending ? "Signing out" : undefined}
      onClick={() => {
        setPending(true);
        void signOut({ callbackUrl: "/sign-in" });
      }}
    >
      Sign out
    </Button>
  );
}

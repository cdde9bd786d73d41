import { type ReactNode } from "react";
import { DoorFrame } from "../door-frame";

export default function PublicLayout({ children }: { readonly children: ReactNode }) {
  return <DoorFrame>{children}</DoorFrame>;
}

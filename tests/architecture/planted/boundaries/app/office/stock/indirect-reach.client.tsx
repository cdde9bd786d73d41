"use client";
import { columns } from "./columns";

export const table = columns;

"use client";

import { setShopPositionSchema } from "#application/days/set-shop-position.schema";
import { Row } from "#ui/row";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { setShopPositionAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="ZIP code of the shop" optional inputMode="numeric" autoComplete="off" width="short" hint="Gives the middle of its area." {...useField("zip")} />
      <Row align="top">
        <TextField label="Latitude" optional autoComplete="off" width="medium" hint="Degrees, such as 41.5402." {...useField("latitude")} />
        <TextField label="Longitude" optional autoComplete="off" width="medium" hint="Degrees, west is below zero: -87.0931." {...useField("longitude")} />
      </Row>
    </>
  );
}

export function SetShopPositionForm() {
  return (
    <ActionForm
      action={setShopPositionAction}
      schema={setShopPositionSchema}
      values={{ zip: "", latitude: "", longitude: "" }}
      submit="Set the place"
      whilePending="Setting"
    >
      <Fields />
    </ActionForm>
  );
}

import { type VehicleOnFile } from "#application/equipment/gear-on-file";
import { truckWords } from "./gear-words";

/** The trucks in use, as answers to choose from. */
export function trucksToChoose(vehicles: readonly VehicleOnFile[]) {
  return vehicles.filter((vehicle) => !vehicle.isStoodDown).map((vehicle) => ({ value: vehicle.vehicleId, word: truckWords(vehicle) }));
}

/** A rocket as a person describes it: millimetres, grams, degrees. */
export interface Design {
  name?: string;
  /** Nose to tail, 1 to 12. */
  sections: Section[];
  /** 0 to 4 sets. */
  fins?: FinSet[];
  /** 0 to 12. */
  weights?: Weight[];
  measured?: Measured;
}

export interface Section {
  kind: SectionKind;
  length_mm: number;
  /** Missing or null: as wide as the neighbour (a nose: behind; others: in front). */
  diameter_mm?: number | null;
  /** A tube with a floor, as a bottle has. */
  closed_front?: boolean;
  mass: Mass;
}

export type SectionKind =
  | "cone" | "ogive" | "ellipsoid" | "paraboloid" | "dome"
  | "tube" | "straight_taper" | "rounded_taper" | "neck";

/** Weighed, cut from a sheet, or ("joined") part of the piece in front. */
export type Mass =
  | { weighed_g: number }
  | { material: Material }
  | { sheet_g_per_m2: number }
  | "joined";

export type Material =
  | "paper80" | "card160" | "card220" | "card300"
  | "corrugated_e" | "corrugated_b" | "corrugated_plastic"
  | "polystyrene5" | "balsa3" | "bottle_wall";

export interface FinSet {
  /** 2 to 8. */
  count: number;
  /** Front of the root, from the nose tip. */
  start_mm: number;
  roll_deg?: number;
  planform: Planform;
  mass: Mass;
}

export type Planform =
  | { four_sided: { root_mm: number; tip_mm: number; span_mm: number; sweep_mm: number } }
  /** Corners [along, out] from the front of the root, 3 to 24. */
  | { own_outline_mm: [number, number][] };

export interface Weight {
  label?: string;
  mass_g: number;
  position_mm: number;
}

export interface Measured {
  total_mass_g?: number | null;
}

export interface Report {
  /** Empty is good. */
  faults: Fault[];
  /** Null when a fault stops the computation. */
  figures: Figures | null;
}

export interface Fault {
  /** JSON pointer (RFC 6901) into the design. */
  field: string;
  /** Whether it leaves no figures, or only looks like a slip. */
  severity: "stop" | "ask";
  /** What is wrong. A code stays when the sentence is worded anew; there may be more of them. */
  code: FaultCode;
  /** The numbers in it, those that belong to its code. */
  values: FaultValues;
  /** What is wrong and how to mend it, in the language in use, in millimetres and grams. */
  sentence: string;
}

export type FaultCode =
  /** A number: least, most. */
  | "not_a_number" | "out_of_bounds"
  /** Too many parts: most. Names: most, in letters. */
  | "too_many_sections" | "too_many_fin_sets" | "too_many_weights"
  | "name_too_long" | "text_too_long"
  /** The body: least_mm, most_mm, bottle_mm, neck_mm. */
  | "no_sections" | "nose_not_first" | "taper_first" | "width_missing"
  | "ogive_too_short" | "dome_too_long" | "neck_too_wide" | "bottle_too_narrow"
  /** Masses: computed_g, measured_g. */
  | "joined_to_nothing" | "fin_joined" | "nothing_weighed" | "mass_differs"
  /** Fins and weights: length_mm of the body, by_mm; corners: least, most. */
  | "fin_off_body" | "fin_overhangs" | "fin_crosses_itself" | "fin_touches_nothing"
  | "too_few_points" | "too_many_points" | "weight_outside"
  | "two_fins" | "many_fins" | "slender_fins" | "same_fins_twice" | "fins_in_wake"
  /** Slips: typed_mm, typed_g. */
  | "centimetres_for_millimetres" | "kilograms_for_grams";

export interface FaultValues {
  /** In the unit of the field (mm, g, degrees, g/m²), or a count. */
  least?: number;
  most?: number;
  least_mm?: number;
  most_mm?: number;
  bottle_mm?: number;
  neck_mm?: number;
  length_mm?: number;
  by_mm?: number;
  typed_mm?: number;
  typed_g?: number;
  computed_g?: number;
  measured_g?: number;
}

/** SI units; distances run from the nose tip towards the tail. */
export interface Figures {
  length_m: number;
  body_width_m: number;
  side_area_m2: number;
  /** Measured if it was, else computed from the view of the drawing. */
  centre_of_pressure_side_on_m: number;
  computed_centre_of_pressure_side_on_m: number;
  /** Computed, with whatever was measured put in its place. */
  mass: MassProperties;
  computed_mass: MassProperties;
  /** In the view of the drawing; positive when the centre of mass is nearer the nose. */
  separation_m: number;
  /** The same in the least favourable roll. */
  least_separation_m: number;
  separation_body_widths: number;
  nearer_the_nose: "centre_of_mass" | "centre_of_pressure" | "neither";
  /** In the least favourable roll; null where the air pushes next to nothing. */
  centre_of_pressure_nose_on_m: number | null;
  centre_of_pressure_nose_on_rolled_m: Span | null;
  /** Per radian, on the body's largest cross-section. */
  normal_force_slope_per_rad: number;
  outcome: Outcome;
  /** Nose first (0) to tail first (pi). */
  resting_angles: Rest[];
  /** By how much the rocket is turned out of the view of the drawing in the roll that decides. */
  deciding_roll_deg: number;
  parts: PartFigures[];
}

export interface Span {
  least: number;
  most: number;
}

export type Outcome =
  | "self_righting"
  | "straight_start_only"
  | { broadside: { angle_rad: number } }
  | "swaps_ends";

export interface Rest {
  angle_rad: number;
  /** Whether the rocket comes back there when it is turned a little. */
  holds: boolean;
}

export interface MassProperties {
  mass_kg: number;
  centre_m: number;
  axial_inertia_kg_m2: number;
  transverse_inertia_kg_m2: number;
}

export interface PartFigures extends MassProperties {
  /** JSON pointer (RFC 6901) into the design. */
  part: string;
  area_m2: number;
  normal_force_slope_per_rad: number;
  /** From the nose tip; null where there is no such force. */
  nose_on_centre_m: number | null;
}

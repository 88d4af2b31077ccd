/** One hour of a weather file. Null is what the file does not tell. */
export interface HourlyRow {
  /** Line of the file, from 1. */
  readonly line: number
  readonly year: number
  readonly month: number
  readonly day: number
  /** The hour begins so many hours after midnight, 0 to 23. */
  readonly hour: number
  /** Hours since 1970, in the time that the file keeps. */
  readonly time: number
  /** Rain on level ground, mm. */
  readonly rain: number | null
  /** The number that the file gives for the rain, whatever its unit. */
  readonly rainAsWritten: number | null
  /** Mean wind, m/s. */
  readonly wind: number | null
  /** Where the wind comes from, degrees from north, clockwise. */
  readonly direction: number | null
  /** °C. */
  readonly temperature: number | null
  /** True where the rain is that of several hours, so that it is none of this hour's. */
  readonly ofSeveralHours: boolean
}

/** A line that could not be read as an hour, and why. */
export interface Malformed {
  readonly line: number
  readonly why: string
}

/** What a weather file held. Every line is an hour, malformed, empty, or of another station. */
export interface HourlyFile {
  readonly rows: readonly HourlyRow[]
  readonly malformed: { readonly count: number; readonly first: readonly Malformed[] }
  readonly ofOtherStations: number
  /** True where the file leaves dry hours out. */
  readonly dryHoursLeftOut: boolean
}

export type HourlyReading = { readonly ok: true; readonly file: HourlyFile } | { readonly ok: false; readonly why: string }

/** What a line yields: an hour, why there is none, or nothing where it belongs to another station. */
export type LineReading = HourlyRow | { readonly why: string } | undefined

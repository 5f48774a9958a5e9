// Chassis numbers: every way to introduce one, what is masked of it, and what the documented cars round it tell.
import { describe, expect, test } from "vitest";
import { monthStart } from "../../../knowledge/calendar/interval.ts";
import { buildInterval, maskSerials, productionSpan } from "../../../knowledge/language/serials.ts";
import { wordings } from "../../support/wordings.ts";

type Cars = Parameters<typeof maskSerials>[1];

function carsOf(form: string, anchors: readonly { serial: number; built: string }[] = []): Cars {
  return {
    models: [
      { id: "two", name: "Two", also: [], from: "1979-01", to: "1986-12" },
      { id: "one", name: "One", also: [], from: "1977-01", to: "1984-12" },
    ],
    trims: [],
    markets: [],
    production: {},
    serials: { form, anchors },
  } as unknown as Cars;
}
const cars = carsOf("WS-####");
const masked = (text: string, of = cars): string => maskSerials(text, of).text;

test("a number is masked behind any word for it", () => {
  const table = `{chassis,serial,vin,commission} {,is ,: ,= ,# ,number ,number is ,no ,no. ,read ,reads ,say ,says ,ending in }1174
    {frame,vehicle,car,plate,body} {number,numbers,no,no.,nos,nr,nr.,id,#,plate number,id no.} {,is ,#}1174
    chassis#1174
    chassis number 1174{, it,. so, x}`;
  expect(wordings(table).filter((text) => masked(text) !== text.replace("1174", "••••"))).toEqual([]);
});

test.each([
  ["chassis 11981", "chassis •••••"],
  ["chassis 19812", "chassis •••••"],
  ["chassis 2001", "chassis 2001"],
  ["chassis 1174x", "chassis 1174x"],
  ["chassis 12", "chassis 12"],
  ["car 1174", "car 1174"],
])("%s is shown as %s", (text, expected) => {
  expect(masked(text)).toBe(expected);
});

test("the form of the handbook is known with and without its signs, and with one nought less", () => {
  const six = carsOf("WS-######");
  expect(["WS-123456", "ws 12345", "WS-1234"].map((text) => masked(text, six))).toEqual([
    "WS-••••••",
    "ws •••••",
    "WS-1234",
  ]);
  expect(masked("W.S/1234 WxS/1234", carsOf("W.S/####"))).toBe("W.S/•••• WxS/1234");
  expect(masked("(123)", carsOf("(###)"))).toBe("(•••)");
  expect(masked("x.WS-1234 xWS-1234", carsOf(".WS-####"))).toBe("x.WS-•••• xWS-1234");
});

test("what is shown of a number is in capitals, what is kept of it without blanks, and a number of seventeen signs is one", () => {
  const found = (text: string) => maskSerials(text, cars, (serial) => `<${serial}>`).serials;
  expect(found("ws 0300")).toMatchObject([{ masked: "WS ••••", digest: "<300>" }]);
  expect(found("serial ab12 and nothing")).toEqual([]);
  expect(found("chassis 12a345")).toMatchObject([{ masked: "••A•••", digest: "<345>" }]);
  const lettered = maskSerials("plate 12-a", carsOf("##-A"), (serial) => `<${serial}>`).serials;
  expect(lettered).toEqual([{ masked: "••-A", digest: "<12A>" }]);
  // The example of 49 CFR 565 (a valid check digit), from memory.
  const [vin] = found("it is 1M8GDM9AXKP042788");
  expect(vin?.digest).toBe("<1M8GDM9AXKP042788>");
  expect(vin?.masked).not.toContain("042788");
  expect(found("no number at all")).toEqual([]);
});

describe("the documented cars round a number", () => {
  const anchors = [
    { serial: 100, built: "1978-03" },
    { serial: 500, built: "1980-06" },
  ];
  const known = carsOf("WS-####", anchors);
  test("close the stretch in which it was built, and else the years of all models", () => {
    expect(productionSpan(known)).toEqual({ from: monthStart(1977, 1), to: monthStart(1987, 1) });
    expect(buildInterval(50, known)).toEqual({ from: monthStart(1977, 1), to: monthStart(1978, 4) });
    expect(buildInterval(100, known)).toEqual({ from: monthStart(1978, 3), to: monthStart(1978, 4) });
    expect(buildInterval(300, known)).toEqual({ from: monthStart(1978, 3), to: monthStart(1980, 7) });
    expect(buildInterval(750, known)).toEqual({ from: monthStart(1980, 6), to: monthStart(1987, 1) });
    expect([0, 751].map((serial) => buildInterval(serial, known))).toEqual([undefined, undefined]);
  });
  test("tell nothing where they contradict each other or are none", () => {
    const contrary = carsOf("WS-####", [
      { serial: 100, built: "1980-06" },
      { serial: 500, built: "1978-03" },
    ]);
    expect(buildInterval(300, contrary)).toBeUndefined();
    expect(buildInterval(300, { ...known, serials: undefined } as Cars)).toBeUndefined();
    expect(maskSerials("chassis 1174", { ...known, serials: undefined } as Cars).serials).toStrictEqual([
      { masked: "••••" },
    ]);
    expect(masked("my number is undefined", { ...known, serials: undefined } as Cars)).toBe(
      "my number is undefined",
    );
  });
});

// The published estimators of a last sighting against their papers. Figures the papers print are marked; the others
// were computed by two public implementations. The sightings are those printed in the papers.
import { describe, expect, test } from "vitest";
import { jaricRobertsEnd } from "../../knowledge/dating/doubtful-end.ts";
import { solowEnd, straussSadlerEnd } from "../../knowledge/dating/even-end.ts";
import { lastSighting } from "../../knowledge/dating/last-sighting.ts";
import { robertsSolowEnd } from "../../knowledge/dating/thinning-end.ts";
import { granted } from "../support/granted.ts";

// A. R. Solow (1993), Ecology 74: Caribbean monk seal. D. L. Roberts & A. R. Solow (2003), Nature 426: dodo.
const seal = { places: [1915, 1922, 1932, 1948, 1952], looked: 1992 };
const dodo = { places: [1598, 1601, 1602, 1607, 1611, 1628, 1628, 1631, 1638, 1662], looked: 2002 };

function near(actual: number, expected: number, relative = 1e-6): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
}

describe("Solow 1993, constant use", () => {
  test("the monk seal", () => {
    const end = granted(solowEnd(seal));
    expect(end.sightings).toBe(4);
    near(end.silenceChance, 0.05331433);
    near(end.estimate, 1961.25);
    near(end.upper, 1993.2455);
    near(end.stillInUseFactor, 0.3743939);
    near(end.stillInUse, 0.2724066);
  });
  test("the dodo", () => {
    const end = granted(solowEnd(dodo));
    expect(end.sightings).toBe(9);
    near(end.silenceChance, 6.283295e-8);
    near(end.estimate, 1669.1111);
    near(end.upper, 1687.2769);
    near(end.stillInUseFactor, 3.173065e-6);
    near(end.stillInUse, 3.173055e-6);
  });
  test("a beginning that is known keeps the first sighting in the count", () => {
    const end = granted(solowEnd({ ...seal, places: seal.places.slice(1), begun: 1915 }));
    near(end.silenceChance, 0.05331433);
  });
});

test("Strauss & Sadler 1989 agrees with Solow's estimate and limit by algebra", () => {
  near(granted(straussSadlerEnd(seal)).estimate, 1961.25);
  near(granted(straussSadlerEnd(seal)).upper, 1993.2455);
  near(granted(straussSadlerEnd(dodo)).estimate, 1669.1111);
  near(granted(straussSadlerEnd(dodo)).upper, 1687.2769);
});

describe("Roberts & Solow 2003, use that thins out", () => {
  const end = granted(robertsSolowEnd(dodo));
  test("the dodo ended about 1690, almost thirty years after its last sighting (printed)", () => {
    expect(Math.round(end.estimate)).toBe(1690);
    expect(Math.abs(end.estimate - 1690.418)).toBeLessThan(1e-3);
  });
  test("shape, limits and weights", () => {
    expect(Math.abs(end.shape - 0.3846584)).toBeLessThan(1e-6);
    expect(Math.abs(end.lower - 1669.133)).toBeLessThan(1e-3);
    expect(Math.abs(end.twoSidedUpper - 1798.879)).toBeLessThan(1e-3);
    expect(Math.abs(end.twoSidedUpper - 1797)).toBeLessThan(3); // the paper, which rounds the shape (from memory)
    expect(Math.abs(end.upper - 1770.495)).toBeLessThan(1e-3);
    near(end.silenceChance, 0.001683831);
    const weights = [
      1.0182394, 0.2557514, 0.1847036, 0.1470056, 0.1232928, 0.1068522, 0.0947087, 0.0853306, 0.0778447,
      -1.0937291,
    ];
    end.weights.forEach((weight, index) => {
      expect(Math.abs(weight - (weights[index] as number))).toBeLessThan(1e-6);
    });
    expect(end.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
  });
  test("from the last five sightings alone", () => {
    const last = granted(robertsSolowEnd({ ...dodo, places: dodo.places.slice(-5) }));
    expect(Math.abs(last.estimate - 1737.493)).toBeLessThan(1e-3);
  });
});

describe("Jarić & Roberts 2014, sightings that may be wrong", () => {
  const sure = seal.places.map((place) => ({ place, reliability: 1 }));
  test("with every sighting certain it is Solow's", () => {
    expect(jaricRobertsEnd({ sightings: sure, looked: 1992 })).toEqual(solowEnd(seal));
    const nearly = sure.map(({ place }) => ({ place, reliability: 1 - 1e-9 }));
    near(granted(jaricRobertsEnd({ sightings: nearly, looked: 1992 })).upper, 1993.2455);
  });
  test("two sightings of which one is even odds, by hand", () => {
    // t = 10 (p 1), 20 (p ½), 30 (p ½) since 0: r = 2, t_r = 30·½ + 20·½·½ + 10·½·½ = 22.5; estimate 22.5·3/2.
    const sightings = [
      { place: 10, reliability: 1 },
      { place: 20, reliability: 0.5 },
      { place: 30, reliability: 0.5 },
    ];
    const end = granted(jaricRobertsEnd({ sightings, begun: 0, looked: 90 }));
    near(end.estimate, 33.75, 1e-12);
    near(end.silenceChance, 1 / 16, 1e-12);
  });
});

test("too few sightings are refused, with the reason", () => {
  expect(solowEnd({ places: [1915, 1922], looked: 1992 })).toMatchObject({
    ok: false,
    problem: { code: "too-few-sightings" },
  });
  expect(straussSadlerEnd({ places: [1, 2], looked: 3 })).toMatchObject({ ok: false });
  expect(robertsSolowEnd({ places: [1, 2, 3, 4], looked: 9 })).toMatchObject({ ok: false });
  expect(robertsSolowEnd({ places: [1, 2, 3, 4, 4], looked: 9 })).toMatchObject({
    problem: { code: "sightings-tied" },
  });
  expect(jaricRobertsEnd({ sightings: [{ place: 1, reliability: 0.5 }], begun: 0, looked: 9 })).toMatchObject(
    { ok: false },
  );
  expect(solowEnd({ places: [1, 2, 3], begun: 0, looked: 3 })).toMatchObject({
    problem: { code: "after-the-end" },
  });
});

// The ivory-billed woodpecker: record of D. L. Roberts, C. S. Elphick & J. M. Reed, Conservation Biology 24, 2010, 1897 to
// 2010. Solow's figures for the 22 certain years: his formulas worked out by hand. First posterior mode of the extinction,
// 1944: A. Solow and others, Conservation Biology 26, 2012 (abstract).
describe("the ivory-billed woodpecker, seen for certain until 1939 and doubtfully until 2006", () => {
  const certain = [
    1897, 1898, 1899, 1900, 1901, 1902, 1904, 1905, 1906, 1907, 1908, 1909, 1910, 1913, 1914, 1917, 1924,
    1925, 1932, 1935, 1938, 1939,
  ];
  const doubtful = [
    1911, 1916, 1920, 1921, 1923, 1926, 1929, 1930, 1931, 1933, 1934, 1936, 1937, 1941, 1942, 1943, 1944,
    1946, 1948, 1949, 1950, 1951, 1952, 1955, 1958, 1959, 1962, 1966, 1967, 1968, 1969, 1971, 1972, 1973,
    1974, 1976, 1981, 1982, 1985, 1986, 1987, 1988, 1999, 2004, 2005, 2006,
  ];
  // A year stands for a month, which the dating of cars counts in.
  const seen = (years: readonly number[], asBuilt: number) =>
    years.map((year) => ({ built: { from: year, to: year }, asBuilt }));
  const window = { from: 1897, to: 2010 };
  const found = granted(lastSighting({ window }, [...seen(certain, 0.99), ...seen(doubtful, 0.2)]));
  const solow = granted(found.solow);

  test("the certain sightings alone: p 9.40996e-10, Bayes factor 5.06345e-8, relative tolerance 1e-5", () => {
    const end = granted(solowEnd({ places: certain, looked: 2010 }));
    near(end.silenceChance, 9.40996e-10, 1e-5);
    near(end.stillInUseFactor, 5.06345e-8, 1e-5);
  });
  test("the last trusted sighting, the estimate and the limit, to a hundredth of a year", () => {
    expect(found.atLeast).toBe(1939);
    expect(solow.sightings).toBe(21);
    expect(Math.abs(solow.estimate - 1941)).toBeLessThan(0.01);
    expect(Math.abs(solow.limit - 1945.44)).toBeLessThan(0.01);
  });
  test("the published first mode, 1944, lies between the last trusted sighting and the limit", () => {
    expect(1944).toBeGreaterThan(found.atLeast ?? Number.NaN);
    expect(1944).toBeLessThan(solow.limit);
  });
  // Reliabilities .99 for the 22 certain years, .5 for the 17 doubtful ones until 1944, .01 for the 29 after it: estimate and
  // limit by a public implementation of Jarić & Roberts 2014, tolerance 1e-3 years.
  test("with a reliability for every sighting the end is 1952.5259 and its limit 1956.4346", () => {
    const sightings = [
      ...certain.map((place) => ({ place, reliability: 0.99 })),
      ...doubtful.map((place) => ({ place, reliability: place <= 1944 ? 0.5 : 0.01 })),
    ];
    const end = granted(jaricRobertsEnd({ sightings, looked: 2010 }));
    expect(Math.abs(end.estimate - 1952.5259)).toBeLessThan(1e-3);
    expect(Math.abs(end.upper - 1956.4346)).toBeLessThan(1e-3);
  });
  // The paper's Bayes factor for extinction, 4.03, is no figure to hold anything against: its abstract names neither the likelihood of the
  // doubtful sightings nor the prior of the date, and re-implementations differ by a factor of two.
  test("it has ended, as the paper finds", () => {
    expect(solow.isOpen).toBe(false);
    expect(granted(found.jaricRoberts).isOpen).toBe(false);
  });
  test("doubtful sightings that count for something put the end later than the certain ones alone", () => {
    expect(granted(found.jaricRoberts).estimate).toBeGreaterThan(solow.limit);
  });
});

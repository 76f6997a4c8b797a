package catalogue

import (
	"fmt"
	"strings"

	"contralay/model/unit"
)

// maxDeviceCavities is a stop against a slip of the finger, like maxCavities.
const maxDeviceCavities = 200

// What the figures of a device may be: A and s.
var (
	flowSpan = span{1e-6, 10000}
	timeSpan = span{1e-6, 86400}
)

// mostTogether is how many wires a unit takes: a quad.
const mostTogether = 4

func (b *builder) source(e *entry) {
	s := Source{ID: e.text("id", true), Document: e.text("document", true), Place: e.text("place", false), How: e.text("how", false)}
	b.claim(e, "source", "id", s.ID)
	b.c.Sources[s.ID] = s
}

func (b *builder) device(e *entry) {
	d := Device{
		ID:       e.text("id", true),
		Names:    e.list("names"),
		Prefix:   e.list("prefix"),
		Group:    e.text("group", true),
		Cavities: e.whole("cavities", true, 1, maxDeviceCavities),
		Contact:  e.text("contact", false),
		Ask:      e.text("ask", false),
		Outside:  e.text("outside", false),
		Note:     e.text("note", false),
	}
	d.Layout = e.taken("layout", true, Published)
	if len(d.Names) == 0 {
		e.wrong("names", "it is missing", `a list of different texts, the commonest name first: ["fuel injector"]`)
	}
	if n := len(d.Prefix); n == 0 || n != 1 && n != len(d.Names) {
		e.wrong("prefix", fmt.Sprintf("it has %d texts for %d names", n, len(d.Names)), "one for all names, or one for each")
	}
	for _, p := range d.Prefix {
		if strings.Trim(p, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != "" {
			e.wrong("prefix", shown(p)+" is not made of capital letters", `capital letters alone, "INJ": a number is put behind them`)
		}
	}
	d.Carries = e.carries()
	checkCarries(e, &d)
	b.claim(e, "device", "id", d.ID)
	b.c.Devices = append(b.c.Devices, d)
}

// has reports whether an entry gives a key, rightly or not.
func (e *entry) has(key string) bool {
	_, given := e.vals[key]
	return given
}

// taken reads NAME_is and NAME_from. A worked value can be trusted no further than what it is
// worked from. What is published or measured says where.
func (e *entry) taken(name string, must bool, from Standing) Taken {
	const allowed = "house, published, worked, practice, memory"
	t := Taken{From: e.text(name+"_from", false)}
	v, ok := e.get(name+"_is", must, allowed)
	if !ok {
		return t
	}
	word, _ := v.(string)
	switch {
	case !must:
		e.wrong(name+"_is", "it says how far a value can be trusted that is not given", "the value, or neither")
	case word == "worked":
		t.Standing, t.Worked = Weakest(Published, from), true
	case Standing(word).Known():
		t.Standing = Standing(word)
	default:
		e.wrong(name+"_is", shown(v)+" is not a standing", allowed)
	}
	if t.From == "" && (t.Worked || t.Standing == Published || t.Standing == House) {
		e.wrong(name+"_from", "it is missing", "where a value comes from that is "+word)
	}
	return t
}

// carries reads the rows of a device, one for each cavity and one for the drain of each shield.
func (e *entry) carries() []DeviceCavity {
	const key, allowed = "carries", `[{ cavity = "1", what = "signal", role = "signal", far = "controller" }]`
	v, ok := e.get(key, true, allowed)
	if !ok {
		return nil
	}
	rows, isList := tableRows(v)
	if !isList || len(rows) == 0 {
		e.wrong(key, shown(v)+" is not a list of what its cavities carry", allowed)
		return nil
	}
	out := make([]DeviceCavity, len(rows))
	for n, row := range rows {
		sub := &entry{file: e.file, lines: e.lines, path: fmt.Sprintf("%s.carries[%d]", e.path, n),
			name: fmt.Sprintf("%s: carries %d", e.name, n+1), vals: row}
		out[n] = sub.carried()
		e.errs = append(e.errs, sub.done()...)
	}
	return out
}

// carried reads one row. A drain has no figures.
func (e *entry) carried() DeviceCavity {
	c := DeviceCavity{
		Cavity: e.text("cavity", false),
		What:   e.text("what", true),
		Role:   e.word("role", "power", "ground", "signal", "data"),
		Far:    e.text("far", true),
		Shield: e.text("shield", false),
	}
	if !e.has("cavity") {
		e.wrong("cavity", "it is missing", `the name of a cavity; "" for the drain of a shield`)
	}
	if c.Drain() {
		if c.Shield == "" {
			e.wrong("shield", "a row without a cavity is the drain of a shield, and names none", "the letter of its shield")
		}
		return c
	}
	c.Feed, c.Pair, c.Return = e.text("feed", false), e.text("pair", false), e.text("return", false)
	c.Amps = unit.Ampere(e.number("amps", false, flowSpan))
	c.AmpsIs = e.taken("amps", e.has("amps"), Published)
	c.OnS, c.PeriodS = unit.Second(e.number("on_s", false, timeSpan)), unit.Second(e.number("period_s", false, timeSpan))
	c.RestA = unit.Ampere(e.number("rest_a", false, flowSpan))
	c.DutyIs = e.taken("duty", e.has("on_s"), Published)
	if (c.OnS > 0) != (c.PeriodS > 0) || c.OnS > 0 && c.OnS >= c.PeriodS || c.OnS > 0 && c.Amps == 0 {
		e.wrong("on_s", "it makes no duty with period_s and amps", "all three, on_s shorter than period_s, or none")
	}
	c.PeakA, c.PeakS = unit.Ampere(e.number("peak_a", false, flowSpan)), unit.Second(e.number("peak_s", false, timeSpan))
	c.PeakIs = e.taken("peak", e.has("peak_a"), c.AmpsIs.Standing)
	if (c.PeakA > 0) != (c.PeakS > 0) {
		e.wrong("peak_a", "it makes no peak with peak_s", "both, or neither")
	}
	c.LimitA = unit.Ampere(e.number("limit_a", false, flowSpan))
	c.LimitIs = e.taken("limit", e.has("limit_a"), Published)
	c.Size = e.sizeToBegin()
	c.SizeIs = e.taken("size", e.has("size"), c.AmpsIs.Standing)
	return c
}

// sizeToBegin reads a size of wire: AWG, or an area in mm2.
func (e *entry) sizeToBegin() string {
	size := e.text("size", false)
	if size == "" {
		return ""
	}
	_, isAWG := AWGNumber(size)
	if _, isArea := MetricArea(size); !isAWG && !isArea {
		e.wrong("size", shown(size)+" is no size of wire", `an AWG size, "22", or an area, "0.35mm2"`)
	}
	return CanonicalSize(size)
}

// checkCarries sees that the rows of a device make one: as many cavities as it says, each once,
// a return that is another of them, twisted and shielded together what a unit can hold.
func checkCarries(e *entry, d *Device) {
	names, together, drains := map[string]bool{}, map[string]int{}, map[string]int{}
	n := 0
	for _, c := range d.Carries {
		switch {
		case c.Drain() && c.Shield == "":
			continue // said already
		case c.Drain():
			drains[c.Shield]++
			continue
		case names[c.Cavity]:
			e.wrong("carries", fmt.Sprintf("cavity %q is in it twice", c.Cavity), "each cavity once")
		}
		n++
		names[c.Cavity] = true
		for kind, letter := range map[string]string{"pair ": c.Pair, "shield ": c.Shield} {
			if letter != "" {
				together[kind+letter]++
			}
		}
	}
	if n != d.Cavities && d.Carries != nil {
		e.wrong("carries", fmt.Sprintf("it has %d cavities", n), fmt.Sprintf("%d, as cavities says", d.Cavities))
	}
	for _, c := range d.Carries {
		if c.Return != "" && (!names[c.Return] || c.Return == c.Cavity) {
			e.wrong("carries", fmt.Sprintf("cavity %q returns by %q", c.Cavity, c.Return), "another of its cavities")
		}
	}
	for _, what := range sortedNames(together) {
		switch k := together[what]; {
		case strings.HasPrefix(what, "pair ") && (k < 2 || k > mostTogether):
			e.wrong("carries", fmt.Sprintf("%d cavities have %s", k, what), "two, three or four that are twisted together")
		case k > mostTogether:
			e.wrong("carries", fmt.Sprintf("%d cavities have %s", k, what), "at most four in one shield")
		}
	}
	for _, letter := range sortedNames(drains) {
		if drains[letter] > 1 || together["shield "+letter] == 0 {
			e.wrong("carries", fmt.Sprintf("shield %s has %d drains and %d cavities", letter, drains[letter], together["shield "+letter]),
				"one drain, and the cavities that are in it")
		}
	}
}

package catalogue

import (
	"fmt"

	"contralay/model/unit"
)

// What the figures of contacts and splices may be: A and mm.
var (
	ampereSpan = span{0.01, 10000}
	sealSpan   = span{0.1, 100}
)

func (b *builder) contact(e *entry) {
	k := Contact{
		Size:        e.text("size", true),
		MaxA:        unit.Ampere(e.number("max_a", true, ampereSpan)),
		LargestAWG:  e.gauge("largest_awg"),
		SmallestAWG: e.gauge("smallest_awg"),
		SealMinMM:   unit.Millimetre(e.number("seal_min_mm", false, sealSpan)),
		SealMaxMM:   unit.Millimetre(e.number("seal_max_mm", false, sealSpan)),
		WellMM:      unit.Millimetre(e.number("well_mm", false, sealSpan)),
		WellBoreMM:  unit.Millimetre(e.number("well_bore_mm", false, sealSpan)),
		Pin:         e.text("pin", false),
		Socket:      e.text("socket", false),
		SocketII:    e.text("socket_ii", false),
		SealPlug:    e.text("seal_plug", false),
		Origin:      e.origin(),
	}
	k.AWGStanding = e.standing("awg_standing", false, k.Standing)
	k.SmallestStanding = e.standing("smallest_standing", false, k.Standing)
	k.SealStanding = e.standing("seal_standing", false, k.Standing)
	b.claim(e, "contact", "size", k.Size)
	large, ok1 := AWGNumber(k.LargestAWG)
	small, ok2 := AWGNumber(k.SmallestAWG)
	if ok1 && ok2 && large > small {
		e.wrong("smallest_awg", shown(k.SmallestAWG)+" is thicker than largest_awg", shown(k.LargestAWG)+" or thinner")
	}
	if (k.SealMinMM == 0) != (k.SealMaxMM == 0) || k.SealMinMM > k.SealMaxMM {
		e.wrong("seal_min_mm", "it makes no range with seal_max_mm", "both, the smaller first, or neither")
	}
	b.c.Contacts[k.Size] = k
}

// gauge reads an AWG size. It must be there.
func (e *entry) gauge(key string) string {
	const allowed = `an AWG size, "22" or "1/0"`
	v, ok := e.get(key, true, allowed)
	if !ok {
		return ""
	}
	s, _ := v.(string)
	if _, ok := AWGNumber(s); !ok {
		e.wrong(key, shown(v)+" is not an AWG size", allowed)
	}
	return CanonicalSize(s)
}

func (b *builder) splice(e *entry) {
	const most = 10_000_000 // circular mils: 100 mm of solid copper
	s := Splice{
		ID:       e.text("id", true),
		Build:    e.word("build", "butt", "parallel"),
		OverMM:   unit.Millimetre(e.number("over_mm", true, boreSpan)),
		LengthMM: unit.Millimetre(e.number("length_mm", true, lengthSpan)),
		CMAMin:   e.whole("cma_min", true, 1, most),
		CMAMax:   e.whole("cma_max", true, 1, most),
		MaxA:     unit.Ampere(e.number("max_a", false, ampereSpan)),
		Origin:   e.origin(),
	}
	b.claim(e, "splice", "id", s.ID)
	if s.CMAMax != 0 && s.CMAMin > s.CMAMax {
		e.wrong("cma_min", shown(int64(s.CMAMin))+" is more than cma_max", fmt.Sprintf("at most %d", s.CMAMax))
	}
	b.c.Splices[s.ID] = s
}

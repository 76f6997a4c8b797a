package lists

import (
	"cmp"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/length"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What ends the wires, as it is bought: connectors, ring terminals, caps, contacts, seals and plugs.

// billEnds is connectors, ring terminals and caps.
func billEnds(s *sheet.Sheet) []BillRow {
	var c counted
	for t := range s.H.Terminations {
		if s.H.Terminations[t].Insert.V != "" {
			connector(&c, &s.H.Terminations[t])
		}
	}
	c.rows = append(c.rows, deviceConnectors(s)...)
	var rings counted
	for t := range s.H.Terminations {
		ring(s, &rings, t)
	}
	for _, cap := range ends.Caps(s) {
		rings.add("end cap", "for a wire of "+unit.Fixed(s.Wires[cap.Wire].Dia.Nominal, 1)+" mm", "over the folded end of a capped spare")
	}
	return append(c.rows, rings.rows...)
}

// connector is one of the catalogue: its arrangement, and what tells it from another of it.
func connector(c *counted, t *model.Termination) {
	var says []string
	for _, word := range []string{string(t.Gender.V), t.Key.V, string(t.Mount.V)} {
		if word != "" {
			says = append(says, word)
		}
	}
	if t.Key.V != "" {
		says[slices.Index(says, t.Key.V)] = "key " + t.Key.V
	}
	c.add("connector", t.Insert.V, strings.Join(says, ", "))
	if t.Gender.V == "" {
		c.rows[len(c.rows)-1].Open = "whether it has pins or sockets is not given, so its contacts have no part"
	}
}

// numbered is the number at the end of a name: injectors 1 to 4 are four of one connector.
var numbered = regexp.MustCompile(`[\s_-]*[0-9]+$`)

// deviceConnectors are those of devices, by what the device is called and how many ways they have. Whoever wires the device
// knows its part: no catalogue here does.
func deviceConnectors(s *sheet.Sheet) []BillRow {
	var out []BillRow
	for t := range s.H.Terminations {
		e := &s.H.Terminations[t]
		if e.Insert.V != "" || isStud(e) {
			continue
		}
		called := numbered.ReplaceAllString(cmp.Or(e.Name.V, e.ID), "")
		row := BillRow{Group: "connector", Part: fmt.Sprintf("%s, %d ways", cmp.Or(called, e.ID), len(s.Terms[t].Cavities)), Says: e.ID,
			Need: 1, Order: 1, Open: "no part is given for it"}
		index := slices.IndexFunc(out, func(r BillRow) bool { return r.Part == row.Part })
		if index < 0 {
			out = append(out, row)
			continue
		}
		out[index].Need++
		out[index].Order++
		out[index].Says += ", " + e.ID
	}
	return out
}

// stud is the size of a stud or screw in the words for what a ring terminal is fitted to.
var stud = regexp.MustCompile(`(?i)\b(M[0-9]+(?:\.[0-9]+)?|#[0-9]+|[0-9]+/[0-9]+ ?in)\b`)

// isStud reports whether an end is a ring terminal on a stud or screw, by what it is said to be fitted to.
func isStud(t *model.Termination) bool {
	text := strings.ToLower(t.Device.V + " " + t.Name.V)
	return t.Insert.V == "" && len(t.Contacts) == 0 && (strings.Contains(text, "stud") || strings.Contains(text, "ring terminal"))
}

// StudOf is the size of the stud of an end, "M6"; ok is whether it is fitted to one at all.
func StudOf(t *model.Termination) (size string, ok bool) {
	if !isStud(t) {
		return "", false
	}
	return stud.FindString(t.Device.V + " " + t.Name.V), true
}

// ring is the terminals on a stud: one for each cavity, which is one barrel, whatever wires share it.
func ring(s *sheet.Sheet, c *counted, t int) {
	size, is := StudOf(&s.H.Terminations[t])
	if !is {
		return
	}
	for _, cavity := range s.Terms[t].Cavities {
		wires := s.Terms[t].State[cavity].Wires
		if len(wires) == 0 {
			continue
		}
		names, as := together(s, wires)
		says := "for " + counts(names)
		if len(wires) > 1 && as != "" {
			says += ", together as " + model.SizeWords(as)
		}
		part := "ring " + size
		if size == "" {
			part = "ring of " + s.H.Terminations[t].ID
		}
		c.add("ring terminal", part, says)
		switch row := &c.rows[len(c.rows)-1]; {
		case size == "":
			row.Open = "the size of its stud is not given"
		case len(wires) > 1 && as == "":
			row.Open = "no barrel is known that takes all its wires"
		}
	}
}

// counts says sizes that are joined, "20 + 22 + 22", with how many there are of each: "20 AWG and 2 x 22 AWG".
func counts(names string) string {
	var out []string
	for all := strings.Split(names, " + "); len(all) > 0; {
		n := 1
		for n < len(all) && all[n] == all[0] {
			n++
		}
		size := model.SizeWords(all[0])
		if n > 1 {
			size = fmt.Sprintf("%d x %s", n, size)
		}
		out, all = append(out, size), all[n:]
	}
	return strings.Join(out, " and ")
}

// billContacts is contacts, and what seals the cavities: plugs once for each part, whichever contacts they go with.
func billContacts(s *sheet.Sheet) []BillRow {
	var out, plugs []BillRow
	for _, b := range BuyList(s) {
		row := BillRow{Group: "contact", Part: cmp.Or(b.Part, "size "+b.Size),
			Says: "size " + b.Size + ", " + string(b.Gender),
			Need: float64(b.Wired + b.Unwired), Order: float64(b.Buy())}
		if b.Part == "" {
			row.Open, row.Says = "no part is given for it", cmp.Or(string(b.Gender), "the device's own")
		}
		out = append(out, row)
		if b.Plugs == 0 {
			continue
		}
		plug := BillRow{Group: "seal plug", Part: cmp.Or(b.Plug, "for size "+b.Size), Says: "one in each cavity without a wire",
			Need: float64(b.Plugs)}
		if b.Plug == "" {
			plug.Open = "no part is given for it"
		}
		index := slices.IndexFunc(plugs, func(r BillRow) bool { return r.Part == plug.Part })
		if index < 0 {
			plugs = append(plugs, plug)
			continue
		}
		plugs[index].Need += plug.Need
	}
	for k := range plugs {
		plugs[k].Order = math.Ceil(plugs[k].Need * (1 + buyMore))
	}
	return slices.Concat(out, billSeals(s), plugs)
}

// billSeals is what seals the wires of connectors that are no catalogue insert, by the wires they take.
func billSeals(s *sheet.Sheet) []BillRow {
	var c counted
	for t := range s.H.Terminations {
		e := &s.H.Terminations[t]
		if len(e.SealMM) != 2 || e.Insert.V != "" {
			continue
		}
		for _, cavity := range s.Terms[t].Cavities {
			if len(s.Terms[t].State[cavity].Wires) > 0 {
				c.add("wire seal", fmt.Sprintf("for %s to %s mm", unit.Fixed(e.SealMM[0], 1), unit.Fixed(e.SealMM[1], 1)),
					"one for each wire; none where the connector seals all its wires in one")
			}
		}
	}
	for k := range c.rows {
		c.rows[k].Order = math.Ceil(c.rows[k].Need * (1 + buyMore))
		c.rows[k].Open = "no part is given for it"
	}
	return c.rows
}

// loopsOf is the service loops at both ends of a wire.
func loopsOf(s *sheet.Sheet, k int) unit.Millimetre {
	w := &s.H.Wires[k]
	return length.Loop(s, w.From.V) + length.Loop(s, w.To.V)
}

package wirelist

import (
	"fmt"
	"strings"

	"contralay/model/catalogue"
)

// facts says what was made.
func (im *importer) facts(tables []Table) {
	say := func(format string, a ...any) { im.rep.Facts = append(im.rep.Facts, fmt.Sprintf(format, a...)) }
	h := &im.h
	files := map[string]bool{}
	for _, t := range tables {
		files[t.File] = true
	}
	from := tables[0].File
	if len(files) > 1 {
		from = counted(len(files), "list", "lists")
	}
	say("%s: %s, %s: %s, %s, %s, %s", from, counted(im.pages, "table", "tables"), counted(im.rows, "row", "rows"), counted(len(h.Terminations), "termination", "terminations"),
		counted(len(h.Wires), "wire", "wires"), counted(len(h.Units), "unit", "units"), counted(len(h.Splices), "splice", "splices"))
	const most = 12 // terminations with a line of their own (no source)
	for i, t := range im.terms {
		if i < most {
			im.rep.Facts = append(im.rep.Facts, im.termFact(t))
		}
	}
	if more := len(im.terms) - most; more > 0 {
		say("and %s", counted(more, "more termination", "more terminations"))
	}
	var units []string
	for i, u := range h.Units {
		if i == most {
			units = append(units, "and "+counted(len(h.Units)-most, "more unit", "more units"))
			break
		}
		units = append(units, fmt.Sprintf("%s %s of wires %s", joinNonEmpty(" ", u.ID, u.Name.V), im.kinds[i], strings.Join(u.Wires, " and ")))
	}
	for k := 0; k < len(units); k += 2 { // two fit a line
		im.rep.Facts = append(im.rep.Facts, strings.Join(units[k:min(k+2, len(units))], "; "))
	}
	im.rep.Facts = append(im.rep.Facts, joinNonEmpty("; ", im.specFact(), im.branchFact()))
}

// termFact is one line about a termination.
func (im *importer) termFact(t *term) string {
	by := map[state][]string{}
	for _, p := range t.pins {
		by[t.state[p]] = append(by[t.state[p]], p)
	}
	parts := []string{counted(len(by[used]), "cavity wired", "cavities wired")}
	for _, s := range []struct {
		of   state
		says string
	}{{spare, "wired spare"}, {reserved, "reserved"}, {blank, "blank"}} {
		if pins := by[s.of]; len(pins) > 0 {
			parts = append(parts, fmt.Sprintf("%d %s (%s)", len(pins), s.says, shortList(pins)))
		}
	}
	if ins, ok := im.cat.Insert(t.Insert.V); ok {
		if n := ins.Count() - len(t.pins); n > 0 {
			parts = append(parts, fmt.Sprintf("%d of %s not in the list", n, t.Insert.V))
		}
	}
	head := t.ID
	if t.Name.Set && t.Name.V != t.ID {
		head += " (" + t.Name.V + ")"
	}
	return head + ": " + joinNonEmpty(", ", joinNonEmpty(" ", t.Insert.V, t.Gender.V), strings.Join(parts, ", "))
}

func shortList(all []string) string {
	const most = 12
	if len(all) > most {
		return strings.Join(all[:most], ", ") + fmt.Sprintf(" and %d more", len(all)-most)
	}
	return strings.Join(all, ", ")
}

// specFact says which specification was taken where the list states none.
func (im *importer) specFact() string {
	awg, metric := 0, 0
	for _, it := range im.items {
		if it.gauge.Spec == "" {
			if _, is := catalogue.MetricArea(it.gauge.Size); is {
				metric++
			} else {
				awg++
			}
		}
	}
	var says []string
	if awg > 0 {
		says = append(says, fmt.Sprintf("%s for %d", im.opt.Spec, awg))
	}
	if metric > 0 {
		says = append(says, fmt.Sprintf("%s for %d", im.opt.Metric, metric))
	}
	if says == nil {
		return ""
	}
	return "wires without specification: " + strings.Join(says, ", ") + " taken"
}

// branchFact says what the branches are.
func (im *importer) branchFact() string {
	h := &im.h
	switch n := len(h.Branches); {
	case n == 1:
		return fmt.Sprintf("branch %s from %s to %s, %s", h.Branches[0].ID, h.Branches[0].From, h.Branches[0].To, im.lengthText())
	case n > 1:
		return fmt.Sprintf("a star of %d branches about %s, %s: the list does not say where the bundle parts", n, h.Breakouts[0].ID, im.lengthText())
	case len(h.Terminations) == 0:
		return "no branch: the list names no termination"
	}
	return "no branch: the list names one termination"
}

// lengthText says which lengths are known.
func (im *importer) lengthText() string {
	n := len(im.h.Branches)
	switch {
	case n == 1 && im.unknown == 0:
		return mmText(im.h.Branches[0].LengthMM) + " from the list"
	case n == 1:
		return fmt.Sprintf("its length not given (%s stands for it)", mmText(standIn))
	case im.unknown == n:
		return fmt.Sprintf("their lengths not given (%s stands for each)", mmText(standIn))
	case im.unknown == 1:
		return fmt.Sprintf("whole lengths on the legs, %s on the trunk", mmText(standIn))
	}
	return fmt.Sprintf("whole lengths on the legs, %s on the trunk and on %d whose length is not given", mmText(standIn), im.unknown-1)
}

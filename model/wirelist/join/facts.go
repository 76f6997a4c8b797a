package join

import (
	"fmt"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Facts says what was made.
func Facts(im *draft.Importer, tables []table.Table) {
	say := func(format string, a ...any) { im.Rep.Facts = append(im.Rep.Facts, fmt.Sprintf(format, a...)) }
	h := &im.H
	files := map[string]bool{}
	for _, t := range tables {
		files[t.File] = true
	}
	from := tables[0].File
	if len(files) > 1 {
		from = report.Counted(len(files), "list", "lists")
	}
	fuses := ""
	if n := len(h.Feeds); n > 0 {
		fuses = ", " + report.Counted(n, "fuse", "fuses")
	}
	say("%s: %s, %s: %s, %s, %s, %s%s", from, report.Counted(im.Pages, "table", "tables"), report.Counted(im.Rows, "row", "rows"),
		report.Counted(len(h.Terminations), "termination", "terminations"),
		report.Counted(len(h.Wires), "wire", "wires"), report.Counted(len(h.Units), "unit", "units"),
		report.Counted(len(h.Splices), "splice", "splices"), fuses)
	const most = 12 // terminations with a line of their own (no source)
	for i, t := range im.Terms {
		if i < most {
			im.Rep.Facts = append(im.Rep.Facts, terminationFact(im, t))
		}
	}
	if more := len(im.Terms) - most; more > 0 {
		say("and %s", report.Counted(more, "more termination", "more terminations"))
	}
	var units []string
	for i, u := range h.Units {
		if i == most {
			units = append(units, "and "+report.Counted(len(h.Units)-most, "more unit", "more units"))
			break
		}
		units = append(units, fmt.Sprintf("%s %s of wires %s", value.JoinNonEmpty(" ", u.ID, u.Name.V), im.Kinds[i],
			strings.Join(u.Wires, " and ")))
	}
	for k := 0; k < len(units); k += 2 { // two fit a line
		im.Rep.Facts = append(im.Rep.Facts, strings.Join(units[k:min(k+2, len(units))], "; "))
	}
	im.Rep.Facts = append(im.Rep.Facts, value.JoinNonEmpty("; ", specFact(im), branchFact(im)))
}

// terminationFact is one line about a termination.
func terminationFact(im *draft.Importer, t *draft.Term) string {
	by := map[name.State][]string{}
	for _, p := range t.Pins {
		by[t.State[p]] = append(by[t.State[p]], p)
	}
	parts := []string{report.Counted(len(by[name.Used]), "cavity wired", "cavities wired")}
	for _, s := range []struct {
		of   name.State
		says string
	}{{name.Spare, "wired spare"}, {name.Reserved, "reserved"}, {name.Blank, "blank"}} {
		if pins := by[s.of]; len(pins) > 0 {
			parts = append(parts, fmt.Sprintf("%d %s (%s)", len(pins), s.says, shortList(pins)))
		}
	}
	if ins, ok := im.Cat.Insert(t.Insert.V); ok {
		if n := ins.Count() - len(t.Pins); n > 0 {
			parts = append(parts, fmt.Sprintf("%d of %s not in the list", n, t.Insert.V))
		}
	}
	head := t.ID
	if t.Name.Set && t.Name.V != t.ID {
		head += " (" + t.Name.V + ")"
	}
	return head + ": " + value.JoinNonEmpty(", ", value.JoinNonEmpty(" ", t.Insert.V, string(t.Gender.V)), strings.Join(parts, ", "))
}

func shortList(all []string) string {
	const most = 12
	if len(all) > most {
		return strings.Join(all[:most], ", ") + fmt.Sprintf(" and %d more", len(all)-most)
	}
	return strings.Join(all, ", ")
}

// specFact says which specification was taken where the list states none.
func specFact(im *draft.Importer) string {
	awg, metric := 0, 0
	for _, it := range im.Items {
		if it.Gauge.Spec == "" {
			if _, is := catalogue.MetricArea(it.Gauge.Size); is {
				metric++
			} else {
				awg++
			}
		}
	}
	var says []string
	if awg > 0 {
		says = append(says, fmt.Sprintf("%s for %d", im.Opt.Spec, awg))
	}
	if metric > 0 {
		says = append(says, fmt.Sprintf("%s for %d", im.Opt.Metric, metric))
	}
	if says == nil {
		return ""
	}
	return "wires without specification: " + strings.Join(says, ", ") + " taken"
}

// branchFact says what the branches are.
func branchFact(im *draft.Importer) string {
	h := &im.H
	switch n := len(h.Branches); {
	case n == 1:
		return fmt.Sprintf("branch %s from %s to %s, %s", h.Branches[0].ID, h.Branches[0].From, h.Branches[0].To, lengthText(im))
	case n > 1:
		return fmt.Sprintf("a star of %d branches about %s, %s: the list does not say where the bundle parts", n, h.Breakouts[0].ID,
			lengthText(im))
	case len(h.Terminations) == 0:
		return "no branch: the list names no termination"
	}
	return "no branch: the list names one termination"
}

// lengthText says which lengths are known.
func lengthText(im *draft.Importer) string {
	n := len(im.H.Branches)
	switch {
	case n == 1 && im.Unknown == 0:
		return value.MmText(im.H.Branches[0].LengthMM) + " from the list"
	case n == 1:
		return fmt.Sprintf("its length not given (%s stands for it)", value.MmText(standIn))
	case im.Unknown == n:
		return fmt.Sprintf("their lengths not given (%s stands for each)", value.MmText(standIn))
	case im.Unknown == 1:
		return fmt.Sprintf("whole lengths on the legs, %s on the trunk", value.MmText(standIn))
	}
	return fmt.Sprintf("whole lengths on the legs, %s on the trunk and on %d whose length is not given", value.MmText(standIn),
		im.Unknown-1)
}

package runs

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// A run that is gone on with after the sheet was changed asks first: what differs from what was
// built is done again, or kept as it was built by somebody with a name.

// The screens of that.
const (
	SinceKind    desk.Kind = "since you built"
	SinceOneKind desk.Kind = "what differs"
)

// since is what differs between what is built and the sheet.
func since(m *desk.Model) built.Comparison {
	r := state(m)
	return r.since.Get(m.Sheet, 0, r.serial, func() built.Comparison { return built.Since(m.Sheet, own(m)) })
}

// SincePage lists what differs, each with what to do about it.
func SincePage(m *desk.Model, w int, _ string) desk.Page {
	c := since(m)
	if len(c.Differences) == 0 {
		return desk.Page{Lines: []string{"Serial " + state(m).serial + " is built as the sheet has it."},
			Rows: []desk.Row{{Key: "go on", Text: "go on with the run", Does: "go on", Enter: toRun}}}
	}
	n, ask := words.Plural(c.Again, "step", "steps")+" to do again", "Do it again, or keep it as it was built, with a name."
	if c.Again == 0 {
		n, ask = "no step to do again", "Somebody with a name decides to go on with it."
	}
	what := "sheet"
	if !slices.ContainsFunc(c.Differences, func(d built.Difference) bool { return d.At != built.AboutCatalogue }) {
		what = "catalogue"
	}
	p := desk.Page{Lines: []string{fmt.Sprintf("Since you built serial %s the %s has changed: %s.", state(m).serial, what, n), ask}}
	if m.ListHeight() < 8 {
		p.Lines = []string{words.Capital(n)}
	}
	for _, d := range c.Differences {
		for k, t := range kit.Wrap(words.Capital(m.Sys.Says(d.Says)), max(20, w-5)) {
			row := desk.Row{Key: "since " + d.At + d.Says, Text: t, Detail: redoes(d),
				Enter: func(m *desk.Model) { m.Show(SinceOneKind, d.Says) }}
			if k > 0 {
				row.Key, row.Text = fmt.Sprint(row.Key, k), "  "+t
			}
			p.Rows = append(p.Rows, row)
		}
	}
	if len(c.Differences) > 1 {
		p.Rows = append(p.Rows, redoRow("do all of it again", c.Differences), keepRow("keep all of it as it was built", c.Differences))
	}
	p.Rows = append(p.Rows, desk.Row{Key: "later", Text: "decide later, go on with the run",
		Detail: "You are asked again at the next start",
		Does:   "go on", Enter: toRun})
	return p
}

// SinceOnePage is one thing that differs: what was built, what is to be done again for it.
func SinceOnePage(m *desk.Model, w int, says string) desk.Page {
	all := since(m).Differences
	k := slices.IndexFunc(all, func(d built.Difference) bool { return d.Says == says })
	if k < 0 {
		return desk.Page{Empty: "This is settled. Esc goes back"}
	}
	d := all[k]
	if d.At == built.AboutCatalogue {
		return cataloguePage(m, w, d)
	}
	keep := "keep it as it was built"
	if len(d.Again) == 0 {
		keep = "go on with it"
	}
	p := desk.Page{Lines: []string{words.Capital(m.Sys.Says(d.Says)) + "."}, Rows: []desk.Row{keepRow(keep, []built.Difference{d})}}
	if len(d.Again) > 0 {
		p.Rows = append(p.Rows, redoRow("do it again", []built.Difference{d})) // not under a second Enter: it takes ticks off
		p.Lines = append(p.Lines, "To do again: "+strings.Join(stepNames(m, d.Again), "; ")+".")
	}
	return asRows(m, p, w)
}

// cataloguePage asks which figures a serial goes by: what it was begun with, or those of the catalogue of today.
func cataloguePage(m *desk.Model, w int, d built.Difference) desk.Page {
	p := desk.Page{Lines: []string{words.Capital(m.Sys.Says(d.Says)) + "."}}
	if moved := run.Moved(m.Sheet, own(m)); len(moved) > 0 {
		p.Lines = append(p.Lines, m.Sys.Says(strings.Join(moved, "; "))+".")
	}
	take := keepRow("take today's figures", nil)
	take.Key, take.Does = "take", "take"
	take.Field.Label = "who takes the figures of today"
	take.Field.Set = func(m *desk.Model, who string) error {
		if who == "" {
			return fmt.Errorf("that needs a name: your number or name")
		}
		m.Change(edited(m, func(b *model.Build) { d.Take(m.Sheet, b, who, now(m)) }), "it goes by the catalogue of today, by "+who)
		settled(m)
		return nil
	}
	p.Rows = []desk.Row{keepRow("keep its own figures", []built.Difference{d}), take}
	return asRows(m, p, w)
}

// asRows puts the lines of a page among its rows where there is no room above them.
func asRows(m *desk.Model, p desk.Page, w int) desk.Page {
	tall := 0
	for _, t := range p.Lines {
		tall += len(kit.Wrap(t, w-1))
	}
	if tall > m.ListHeight()-4 { // no room above the rows: what is to be read are rows as well
		for _, t := range p.Lines {
			for _, t := range kit.Wrap(t, w-3) {
				p.Rows = append(p.Rows, desk.Row{Text: t, Detail: "Read on with the arrows"})
			}
		}
		p.Lines = nil
	}
	return p
}

// stepNames are steps by key as a person says them, each kind of work in one.
func stepNames(m *desk.Model, keys []string) []string {
	at := map[string]string{}
	for _, f := range facts(m) {
		at[f.Key] = f.At
		if f.Kind == built.Put {
			at[f.Key] = strings.TrimSpace(strings.TrimSuffix(f.At, f.What.Part.V)) // its number is on its step
		}
	}
	for _, h := range run.Holds() {
		at[h.Key] = h.Name
	}
	var verbs []string
	of := map[string][]string{}
	for _, key := range keys {
		verb, id := built.Work(key)
		if place, is := at[key]; is {
			id = place
		}
		if name, is := map[string]string{"pin": "contacts of", "hold": "sign"}[verb]; is {
			verb = name
		}
		if len(of[verb]) == 0 {
			verbs = append(verbs, verb)
		}
		of[verb] = append(of[verb], id)
	}
	var out []string
	for _, verb := range verbs {
		out = append(out, verb+" "+strings.Join(of[verb], ", "))
	}
	return out
}

// redoes says what Enter asks about a difference.
func redoes(d built.Difference) string {
	if d.At == built.AboutCatalogue {
		return "Enter asks which figures it goes by, and who decides"
	}
	if len(d.Again) == 0 {
		return "Enter asks who decides to go on with it: no step is to be done again"
	}
	return "Enter asks what to do: do it again, or keep it as it was built"
}

func redoRow(text string, all []built.Difference) desk.Row {
	met := map[string]bool{}
	for _, d := range all {
		for _, key := range d.Again {
			met[key] = true
		}
	}
	return desk.Row{Key: "redo", Text: text, Does: "do again", Detail: "Enter opens these steps again; what was done stays on record",
		Enter: func(m *desk.Model) {
			m.Change(edited(m, func(b *model.Build) {
				for _, d := range all {
					d.Redo(b)
				}
			}), words.Plural(len(met), "tick is", "ticks are")+" taken off, to do again")
			settled(m)
		}}
}

func keepRow(text string, all []built.Difference) desk.Row {
	return desk.Row{Key: "keep", Text: text + ": who decides it?", Does: "keep",
		Detail: "Digits, a scanner, or Enter and a name. It is printed as a deviation",
		Field: &desk.Field{Label: "who keeps it as it was built", Scan: true, Set: func(m *desk.Model, who string) error {
			if who == "" {
				return fmt.Errorf("a deviation needs a name: your number or name")
			}
			m.Change(edited(m, func(b *model.Build) {
				for _, d := range all {
					d.Keep(b, who, now(m))
				}
			}), "kept as it was built, by "+who)
			settled(m)
			return nil
		}}}
}

// settled goes back to what is left to decide, and on to the run where nothing is.
func settled(m *desk.Model) {
	if m.Trouble {
		return // it was refused, and said
	}
	says := m.Says
	if m.Top() == SinceOneKind {
		m.Back()
		m.Unput()
	}
	if len(since(m).Differences) == 0 {
		toRun(m)
	}
	m.Tell(says)
}

// toRun goes on with the run.
func toRun(m *desk.Model) {
	for m.Top() == SinceKind || m.Top() == SinceOneKind {
		m.Back()
	}
	openRun(m)
}

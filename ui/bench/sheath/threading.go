package sheath

import (
	"fmt"
	"strings"

	"contralay/calc/formula/label"
	"contralay/calc/phase/threading"
	whyquery "contralay/calc/query/why"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// The order in which everything is threaded on.

// ThreadingKind is the screen of that order.
const ThreadingKind desk.Kind = "threading"

// ThreadingPage is everything in the order it is threaded on.
func ThreadingPage(m *desk.Model, w int, _ string) desk.Page {
	p := desk.Page{
		Lines: []string{
			"Thread on in this order, before the contacts. Legs that do not meet may go in any order. Each end follows below.",
			"Hold points: ring out bare first; ring out pinned, then trial fit, before you shrink anything."},
		Empty: "Nothing to thread on. Esc goes back"}
	p.Rows = m.Once(fmt.Sprint("threading ", w, m.Sys), func() []desk.Row {
		return append(append(threadRows(m, threading.Threading(m.Sheet), w), glueRows(m)...), endThreadRows(m, w)...)
	})
	return p
}

func threadRows(m *desk.Model, all []threading.Threaded, w int) []desk.Row {
	var out []desk.Row
	for n, t := range all {
		text := fmt.Sprintf("%3d  %-10s %-5s %s", n+1, t.What, t.Of, t.Part)
		room := ""
		var why []desk.Reason
		if t.BoreMM > 0 {
			room = fmt.Sprintf("bore %s, must pass %s %s", m.Sys.Fine(t.BoreMM), m.Sys.Fine(t.PassMM), m.Sys.Name())
			why = append(why, desk.Reason{Made: func() (whyquery.Why, bool) {
				return whyquery.LookedUp("bore of "+t.Part, float64(t.BoreMM), whyquery.Diameter, t.Origin), true
			}})
			if t.What == "sheath" {
				why = append(why, desk.FiguresOf(t.Of, "sheath.pass")...)
			} else {
				why = append(why, desk.Reason{Made: func() (whyquery.Why, bool) { // wire and wall are from memory in most looms
					return whyquery.Stated("to pass "+t.Over, "worked out on the page of its branch", float64(t.PassMM), whyquery.Diameter,
						catalogue.Origin{Source: t.Over, Standing: catalogue.Memory}), true
				}})
			}
		}
		if t.What == "label" {
			room += m.Sys.Says(fmt.Sprintf("; it sits %s to %s mm from the boot's tail", unit.Fixed(label.OffLeast, 0),
				unit.Fixed(label.OffMost, 0)))
			for _, v := range []unit.Millimetre{label.OffLeast, label.OffMost} {
				why = append(why, desk.Reason{Made: func() (whyquery.Why, bool) {
					return whyquery.Stated("where a label sits", "read from the connector, on the clocked side", float64(v),
						whyquery.Length, catalogue.Origin{Source: "common practice, no source", Standing: catalogue.Practice}), true
				}})
			}
		}
		mark := ""
		if !t.Fits() {
			mark = "!"
		}
		from := "from " + t.From
		if t.GoesOn == model.WoundOn {
			from = "wound on in place"
		}
		detail := strings.TrimPrefix(strings.Join([]string{room, from}, "; "), "; ")
		if w >= 76 {
			text = fmt.Sprintf("%s  %s", draw.Fit(text, 46, m.Cfg.ASCII), from)
		}
		out = append(out, desk.Row{Key: fmt.Sprint(t.What, t.Of), Text: text, Mark: mark, Detail: detail, Why: why})
	}
	return out
}

// threadRow is what comes over the tails of a branch's ends, and opens the whole list.
func threadRow(m *desk.Model) desk.Row {
	mb := &m.H.Branches[m.Branch]
	text := "thread on  "
	found := false
	for _, end := range []string{mb.From, mb.To} {
		if _, ok := m.Sheet.Index.Termination[end]; !ok {
			continue
		}
		var parts []string
		for _, t := range threading.TailOf(m.Sheet, end) {
			if t.What != "contacts" {
				parts = append(parts, strings.TrimSpace(string(t.What)+" "+t.Of))
			}
		}
		if len(parts) > 0 {
			text += end + ": " + strings.Join(parts, ", ") + "  "
			found = true
		}
	}
	if !found {
		text += "at the ends beyond (Enter)"
	}
	return desk.Row{Key: "thread", Text: strings.TrimRight(text, " "),
		Detail: "Enter lists what must go on before the contacts, for the whole harness",
		Enter:  func(m *desk.Model) { m.Show(ThreadingKind, "") }}
}

// glueRows is what is done with adhesive once all is rung out, mix by mix.
func glueRows(m *desk.Model) []desk.Row {
	mixes := threading.Mixes(m.Sheet)
	if len(mixes) == 0 {
		return nil
	}
	l := &m.Sheet.Limits
	life := "see its sheet for life and cure"
	if l.PotLifeMin > 0 {
		life = fmt.Sprintf("use within %d min, see its sheet", l.PotLifeMin)
	}
	out := []desk.Row{{Key: "glue", Text: fmt.Sprintf("ADHESIVE: %s, %s", l.Adhesive, words.Plural(len(mixes), "pack", "packs")),
		Detail: "Ring out first. Abrade, wipe, recover, cure; " + life}}
	for n, x := range mixes {
		out = append(out, desk.Row{Key: fmt.Sprint("mix ", n), Text: fmt.Sprintf("  mix %d  %s", n+1, strings.Join(x.Joints, "; ")),
			Detail: "Joints of one mix, one after the other; " + life})
	}
	return out
}

// endThreadRows is what comes over the tails of each end, numbered for whoever stands there.
func endThreadRows(m *desk.Model, w int) []desk.Row {
	var out []desk.Row
	for t := range m.H.Terminations {
		id := m.H.Terminations[t].ID
		tail := threading.TailOf(m.Sheet, id)
		if len(tail) == 0 {
			continue
		}
		out = append(out, desk.Row{Key: "end " + id, Text: fmt.Sprintf("AT %s  %s", id, m.H.Terminations[t].Name.V),
			Detail: "Thread these over the tails in this order, before their contacts"})
		for n, r := range threadRows(m, tail, w) {
			r.Key = fmt.Sprint("end ", id, " ", n)
			out = append(out, r)
		}
	}
	return out
}

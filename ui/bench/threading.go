package bench

import (
	"fmt"
	"strings"

	"contralay/calc"
	"contralay/calc/label"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// The order in which everything is threaded on.

func threadScreen() screen {
	return screen{name: "threading", pick: true, page: func(m *Model, w int) page {
		p := page{lines: []string{"Threaded on in this order, before the contacts; legs that do not meet may go in any order. Below, end by end.", "Hold: ring out bare first; trial fit before anything shrinks for good; ring out pinned before any adhesive."}, empty: "nothing to thread on; Esc goes back"}
		p.rows = m.once(fmt.Sprint("threading ", w, m.sys), func() []row {
			return append(append(m.threadRows(m.sheet.Threading(), w), m.glueRows()...), m.endThreadRows(w)...)
		})
		return p
	}}
}

func (m *Model) threadRows(all []calc.Threaded, w int) []row {
	var out []row
	for n, t := range all {
		text := fmt.Sprintf("%3d  %-11s%-6s%s", n+1, t.What, t.Of, t.Part)
		room := ""
		var why []reason
		if t.BoreMM > 0 {
			room = fmt.Sprintf("bore %s, to pass %s %s", m.sys.Fine(t.BoreMM), m.sys.Fine(t.PassMM), m.sys.Name())
			why = append(why, reason{made: func() (calc.Why, bool) {
				return calc.LookedUp("bore of "+t.Part, float64(t.BoreMM), calc.Diameter, t.Origin), true
			}})
			if t.What == "sheath" {
				why = append(why, figs(t.Of, 0, "", "sheath.pass")...)
			} else {
				why = append(why, reason{made: func() (calc.Why, bool) { // wire and wall are from memory in most looms
					return calc.Stated("to pass "+t.Over, "worked out on the page of its branch", float64(t.PassMM), calc.Diameter, catalogue.Origin{Source: t.Over, Standing: catalogue.Memory}), true
				}})
			}
		}
		if t.What == "label" {
			room += fmt.Sprintf("; sits %s to %s mm off the boot's tail", unit.Fixed(float64(label.OffLeast), 0), unit.Fixed(float64(label.OffMost), 0))
			for _, v := range []unit.Millimetre{label.OffLeast, label.OffMost} {
				why = append(why, reason{made: func() (calc.Why, bool) {
					return calc.Stated("where a label sits", "read from the connector, on the clocked side", float64(v), calc.Length, catalogue.Origin{Source: "common practice, no source", Standing: catalogue.Practice}), true
				}})
			}
		}
		mark := ""
		if !t.Fits() {
			mark = "!"
		}
		from := "from " + t.From
		detail := strings.TrimPrefix(strings.Join([]string{room, from}, "; "), "; ")
		if w >= 76 {
			text = fmt.Sprintf("%s  %s", draw.Fit(text, 46, m.cfg.ASCII), from)
		}
		out = append(out, row{key: fmt.Sprint(t.What, t.Of), text: text, mark: mark, detail: detail, why: why})
	}
	return out
}

// threadRow is what comes over the tails of a branch's ends, and opens the whole list.
func (m *Model) threadRow() row {
	mb := &m.h.Branches[m.branch]
	text := "thread on  "
	found := false
	for _, end := range []string{mb.From, mb.To} {
		if _, ok := m.sheet.X.Termination[end]; !ok {
			continue
		}
		var parts []string
		for _, t := range m.sheet.TailOf(end) {
			if t.What != "contacts" {
				parts = append(parts, strings.TrimSpace(t.What+" "+t.Of))
			}
		}
		if len(parts) > 0 {
			text += end + ": " + strings.Join(parts, ", ") + "  "
			found = true
		}
	}
	if !found {
		text += "over the ends beyond: Enter"
	}
	return row{key: "thread", text: strings.TrimRight(text, " "), detail: "Enter lists it for the whole harness: what cannot go on later, in this order", enter: func(m *Model) { m.open(threadScreen()) }}
}

// glueRows is what is done with adhesive once all is rung out, mix by mix.
func (m *Model) glueRows() []row {
	mixes := m.sheet.Mixes()
	if len(mixes) == 0 {
		return nil
	}
	l := &m.sheet.Limits
	life := "its sheet says for how long it can be used and how it cures"
	if l.PotLifeMin > 0 {
		life = fmt.Sprintf("used within %d minutes; its sheet says how it cures", l.PotLifeMin)
	}
	out := []row{{key: "glue", text: fmt.Sprintf("ADHESIVE: %s, %s", l.Adhesive, plural(len(mixes), "pack", "packs")), detail: "hold: rung out bare, trial fit, rung out pinned, before anything is glued. Abrade, wipe, recover, let cure; " + life}}
	for n, x := range mixes {
		out = append(out, row{key: fmt.Sprint("mix ", n), text: fmt.Sprintf("  mix %d  %s", n+1, strings.Join(x.Joints, "; ")), detail: "joints of one mix, one after the other; " + life})
	}
	return out
}

// endThreadRows is what comes over the tails of each end, numbered for whoever stands there.
func (m *Model) endThreadRows(w int) []row {
	var out []row
	for t := range m.h.Terminations {
		id := m.h.Terminations[t].ID
		tail := m.sheet.TailOf(id)
		if len(tail) == 0 {
			continue
		}
		out = append(out, row{key: "end " + id, text: fmt.Sprintf("AT %s  %s", id, m.h.Terminations[t].Name.V), detail: "over these tails, in this order, before their contacts"})
		for n, r := range m.threadRows(tail, w) {
			r.key = fmt.Sprint("end ", id, " ", n)
			out = append(out, r)
		}
	}
	return out
}

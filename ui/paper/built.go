package paper

import (
	"fmt"
	"strings"

	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/unit"
)

// built is what was measured of each harness that is or was built from this file.
func (m maker) built() []Table {
	var out []Table
	for i := range m.h.Builds {
		b := &m.h.Builds[i]
		t := Table{Title: "As built, serial " + b.Serial,
			Note: strings.Join(nonEmpty(word("revision ", b.Revision.V), word("begun ", b.Begun.V), b.Note.V), "; "),
			Head: []string{"what", "where", m.in("sheet"), m.in("measured"), m.in("mean"), "says"}, Right: right(2, 3, 4)}
		for _, r := range b.Readings {
			m.readingRow(&t, r)
		}
		for _, r := range b.Tubes {
			sheet := "-"
			if k, ok := m.s.Index.Branch[r.Branch]; ok && m.s.Branches[k].Sheath.Verdict.Wraps {
				sheet = m.sys.Diameter(m.s.Branches[k].Sheath.Verdict.OverMM)
			}
			t.add("over the sheath", r.Branch, sheet, m.sys.Diameter(r.OverMM), "", "")
		}
		for _, u := range b.Used {
			sheet := "-"
			for _, r := range lists.ReelList(m.s) {
				if r.Spec == u.Spec && r.Size == u.Size {
					sheet = m.sys.Length(r.NeedMM)
				}
			}
			t.add("wire used", u.Spec+" "+Size(&model.Wire{Size: u.Size}), sheet, m.sys.Length(u.UsedMM), "", "")
		}
		for _, a := range b.Again {
			t.add("contact made anew", a.End, "", fmt.Sprint(a.Times), "", "times")
		}
		for _, s := range b.Signed {
			t.add("signed", s.Step, "", "", "", strings.TrimSpace(s.By+"  "+s.At.V))
		}
		for _, d := range b.Apart {
			t.add("deviation", d.At, "", "", "", d.Says)
		}
		out = append(out, t)
	}
	return out
}

func (m maker) readingRow(t *Table, r model.Reading) {
	sheet := "-"
	if k, ok := m.s.Index.Branch[r.Branch]; ok && r.Layer < len(m.s.Branches[k].Layers) {
		sheet = m.sys.Diameter(m.s.Branches[k].Layers[r.Layer].OverMM)
	}
	var all []string
	sum := unit.Millimetre(0)
	for _, v := range r.OverMM {
		all = append(all, m.sys.Fine(v))
		sum += v
	}
	mean, says := "-", ""
	if n := len(r.OverMM); n > 0 {
		mean = m.sys.Fine(sum / unit.Millimetre(n))
	}
	if r.LayMM.Set {
		says = "turn " + m.sys.Length(r.LayMM.V)
	}
	t.add("over", r.Branch+" "+model.LayerName(r.Layer), sheet, strings.Join(all, ", "), mean, says)
}

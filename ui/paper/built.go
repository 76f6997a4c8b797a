package paper

import (
	"fmt"
	"strings"

	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/paper/list"
)

// builtRow is one thing that was measured, used or done, beside what the sheet has of it.
type builtRow struct {
	what, where           string
	sheet, measured, mean string
	says                  string
}

// built is what was measured of each harness that is or was built from this file.
func (m maker) built() []list.Table {
	var out []list.Table
	for i := range m.H.Builds {
		b := &m.H.Builds[i]
		out = append(out, list.Of(list.Table{Title: "As built, serial " + b.Serial,
			Note: strings.Join(list.NonEmpty(list.Word("revision ", b.Revision.V), list.Word("begun ", b.Begun.V),
				visible.Note(b.Note.V)), "; ")},
			[]list.Column[builtRow]{
				list.Text("what", func(r builtRow) string { return r.what }),
				list.Text("where", func(r builtRow) string { return r.where }),
				list.Figure(m.In("sheet"), func(r builtRow) string { return r.sheet }),
				list.Figure(m.In("measured"), func(r builtRow) string { return r.measured }),
				list.Figure(m.In("mean"), func(r builtRow) string { return r.mean }),
				list.Text("says", func(r builtRow) string { return r.says }),
			}, m.builtRows(b)))
	}
	return out
}

func (m maker) builtRows(b *model.Build) []builtRow {
	var out []builtRow
	for _, r := range b.Readings {
		out = append(out, m.readingRows(r)...)
	}
	for _, r := range b.Tubes {
		row := builtRow{what: "over the sheath", where: r.Branch, sheet: "-", measured: m.Sys.Diameter(r.OverMM)}
		if k, ok := m.S.Index.Branch[r.Branch]; ok && m.S.Branches[k].Sheath.Verdict.Wraps {
			row.sheet = m.Sys.Diameter(m.S.Branches[k].Sheath.Verdict.OverMM)
		}
		out = append(out, row)
	}
	for _, u := range b.Used {
		row := builtRow{what: "wire used", where: u.Spec + " " + list.Size(&model.Wire{Size: u.Size}), sheet: "-",
			measured: m.Sys.Length(u.UsedMM)}
		for _, r := range lists.ReelList(m.S) {
			if r.Spec == u.Spec && r.Size == u.Size {
				row.sheet = m.Sys.Length(r.NeedMM)
			}
		}
		out = append(out, row)
	}
	for _, a := range b.Again {
		out = append(out, builtRow{what: "contact made anew", where: a.End, measured: fmt.Sprint(a.Times), says: "times"})
	}
	for _, s := range b.Signed {
		out = append(out, builtRow{what: "signed", where: s.Step, says: strings.TrimSpace(s.By + "  " + s.At.V)})
	}
	for _, d := range b.Apart {
		who := strings.TrimSpace(d.By.V + "  " + d.On.V)
		out = append(out, builtRow{what: "deviation", where: d.At, says: strings.TrimSpace(d.Says + "  " + who)})
	}
	return out
}

// readingRows are what was read of a layer: of a centre that is built up, before and after.
func (m maker) readingRows(r model.Reading) []builtRow {
	var over, bare unit.Millimetre
	if k, ok := m.S.Index.Branch[r.Branch]; ok && r.Layer < len(m.S.Branches[k].Layers) {
		l := &m.S.Branches[k].Layers[r.Layer]
		over, bare = l.OverMM, l.BareMM()
	}
	where := r.Branch + " " + model.LayerName(r.Layer)
	var out []builtRow
	if len(r.BareMM) > 0 {
		out = append(out, m.readingRow("over, before the tape", where, bare, r.BareMM))
	}
	if len(r.OverMM) > 0 || r.LayMM.Set || len(out) == 0 {
		row := m.readingRow("over", where, over, r.OverMM)
		if r.LayMM.Set {
			row.says = "turn " + m.Sys.Length(r.LayMM.V)
		}
		out = append(out, row)
	}
	return out
}

func (m maker) readingRow(what, where string, sheet unit.Millimetre, read []unit.Millimetre) builtRow {
	row := builtRow{what: what, where: where, sheet: "-", mean: "-"}
	if sheet > 0 {
		row.sheet = m.Sys.Diameter(sheet)
	}
	var all []string
	sum := unit.Millimetre(0)
	for _, v := range read {
		all = append(all, m.Sys.Fine(v))
		sum += v
	}
	row.measured = strings.Join(all, ", ")
	if count := len(all); count > 0 {
		row.mean = m.Sys.Fine(sum / unit.Millimetre(count))
	}
	return row
}

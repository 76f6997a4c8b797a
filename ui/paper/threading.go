package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/threading"
)

// What is threaded on before the contacts, and what is glued after them.

// threadRow is one part to thread on, with its place in the order.
type threadRow struct {
	threading.Threaded
	place int
}

func threadRows(all []threading.Threaded) []threadRow {
	var rows []threadRow
	for k, x := range all {
		rows = append(rows, threadRow{x, k + 1})
	}
	return rows
}

// threadColumns is what both tables say of a part.
func threadColumns() []column[threadRow] {
	return []column[threadRow]{
		{"no", toRight, func(r threadRow) string { return fmt.Sprint(r.place) }},
		{"what", toLeft, func(r threadRow) string { return string(r.What) }},
		{"of", toLeft, func(r threadRow) string { return r.Of }},
		{"part", toLeft, func(r threadRow) string { return r.Part }},
	}
}

// threading is one order of threading as a table.
func (m maker) threading(all []threading.Threaded, title, file string) Table {
	return tableOf(Table{File: file, Title: title}, append(threadColumns(), []column[threadRow]{
		{"comes on from", toLeft, func(r threadRow) string { return r.From }},
		{m.in("bore"), toRight, m.bore},
		{m.in("to pass"), toRight, m.toPass},
		{"over", toLeft, func(r threadRow) string { return m.sys.Says(r.Over) }},
		{"on", byHand, nil},
	}...), threadRows(all))
}

func (m maker) bore(r threadRow) string {
	if r.BoreMM <= 0 {
		return "-"
	}
	return m.sys.Fine(r.BoreMM) + mem(r.Standing)
}

func (m maker) toPass(r threadRow) string {
	if r.BoreMM <= 0 {
		return "-"
	}
	return m.sys.Fine(r.PassMM)
}

// tail is the order at one end, short: whoever stands there has the rest in the list.
func (m maker) tail(all []threading.Threaded, title string) Table {
	return tableOf(Table{Title: title}, append(threadColumns(), column[threadRow]{"on", byHand, nil}), threadRows(all))
}

func (m maker) glue() Table {
	l := &m.s.Limits
	life := "its sheet says how long it can be used, and how it cures"
	if l.PotLifeMin > 0 {
		life = fmt.Sprintf("used within %d minutes of mixing; its sheet says how it cures", l.PotLifeMin)
	}
	type mixRow struct {
		threading.Mix
		number int
	}
	var rows []mixRow
	for k, x := range threading.Mixes(m.s) {
		rows = append(rows, mixRow{x, k + 1})
	}
	return tableOf(Table{Title: "Adhesive: " + l.Adhesive,
		Note: "Not before it is rung out with contacts in. Abrade, wipe, recover, let cure; " + life + "."},
		[]column[mixRow]{
			{"mix", toLeft, func(r mixRow) string { return fmt.Sprint(r.number) }},
			{"joints", toLeft, func(r mixRow) string { return strings.Join(r.Joints, "; ") }},
			{"mixed at", byHand, nil},
			{"done by", byHand, nil},
		}, rows)
}

package paper

import (
	"fmt"

	"contralay/calc/phase/threading"
	"contralay/model/catalogue"
	"contralay/ui/paper/list"
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
func threadColumns() []list.Column[threadRow] {
	return []list.Column[threadRow]{
		list.Figure("no", func(r threadRow) string { return fmt.Sprint(r.place) }),
		list.Text("what", func(r threadRow) string { return string(r.What) }),
		list.Text("of", func(r threadRow) string { return r.Of }),
		list.Text("part", func(r threadRow) string { return r.Part }),
	}
}

// threading is one order of threading as a table.
func (m maker) threading(all []threading.Threaded, title, file string) list.Table {
	return list.Of(list.Table{File: file, Title: title}, append(threadColumns(), []list.Column[threadRow]{
		list.Text("comes on from", func(r threadRow) string { return r.From }),
		list.Figure(m.In("bore"), m.bore).Stands(func(r threadRow) catalogue.Standing { return r.Standing }),
		list.Figure(m.In("to pass"), m.toPass),
		list.Text("over", func(r threadRow) string { return m.Sys.Says(r.Over) }),
		list.Blank[threadRow]("on").InFile(),
	}...), threadRows(all))
}

func (m maker) bore(r threadRow) string {
	if r.BoreMM <= 0 {
		return "-"
	}
	return m.Sys.Fine(r.BoreMM)
}

func (m maker) toPass(r threadRow) string {
	if r.BoreMM <= 0 {
		return "-"
	}
	return m.Sys.Fine(r.PassMM)
}

// threadList is all that is threaded on, for its file.
func (m maker) threadList() list.Table {
	return m.threading(threading.Threading(m.S), "Threading list", "threading")
}

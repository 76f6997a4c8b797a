package paper

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	listsquery "contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
	"contralay/ui/paper/list"
)

// filed is a list of a sheet, read back from its file by another reader: head and rows.
func filed(t *testing.T, l list.Table, marks Marks) (head []string, rows [][]string) {
	t.Helper()
	text, err := CSVWith(l, marks)
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(bytes.NewReader(text))
	r.Comma = marks.Comma
	all, err := r.ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", l.File, err)
	}
	return all[0], all[1:]
}

// listOf is a list of a sheet by its name.
func listOf(t *testing.T, out Sheet, name string) list.Table {
	t.Helper()
	k := slices.IndexFunc(out.Lists, func(l list.Table) bool { return l.File == name })
	if k < 0 {
		t.Fatalf("there is no list %s", name)
	}
	return out.Lists[k]
}

// A file has one value a cell: no mark and no apostrophe in a number, no dash for nothing, no two blanks, the unit in the
// head; a column of figures holds numbers alone, with points or, for a continental spreadsheet, with commas. No two columns
// of a file have one head.
func TestFilesHoldOneValueACell(t *testing.T) {
	number := map[string]*regexp.Regexp{".": regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)?$`), ",": regexp.MustCompile(`^-?[0-9]+(,[0-9]+)?$`)}
	for _, name := range []string{"demo", "whole", "feeds", "example"} {
		for _, l := range made(t, sheetFile(t, name)).Lists {
			if l.File == "ring-out" || l.File == "isolation" {
				continue // what is rung out is a page of its own kind
			}
			var asPoint [][]string
			for _, marks := range []Marks{RFC4180(), Continental()} {
				head, rows := filed(t, l, marks)
				seen := map[string]bool{}
				for _, h := range head {
					if seen[h] {
						t.Errorf("%s %s: two columns %q", name, l.File, h)
					}
					seen[h] = true
				}
				for n, row := range rows {
					for k, cell := range row {
						where := fmt.Sprintf("%s %s, row %d, %s: %q", name, l.File, n+1, head[k], cell)
						figure := k < len(l.Filed.Figure) && l.Filed.Figure[k]
						if figure && cell != "" && !number[marks.Decimal].MatchString(cell) {
							t.Error(where, "is no number")
						}
						if strings.HasPrefix(cell, "'") || strings.Contains(cell, "~") || cell == "-" || strings.Contains(cell, "  ") {
							t.Error(where, "holds a mark")
						}
						if marks.Comma == ';' {
							if want := asPoint[n][k]; figure && cell != strings.Replace(want, ".", ",", 1) || !figure && cell != want {
								t.Errorf("%s: with commas %q", where, want)
							}
						}
					}
				}
				asPoint = rows
			}
		}
	}
}

// The cut list is the wires of the file: each once, with its ends and flags as the file has them, a batch holds wires of
// one spool and one length, and what has come off a spool adds up to the bill's need of it.
func TestCutListFileIsTheHarness(t *testing.T) {
	batched := 0
	for _, name := range []string{"demo", "whole", "feeds", "example"} {
		s := sheetFile(t, name)
		head, rows := filed(t, listOf(t, made(t, s), "cut-list"), RFC4180())
		col := func(row []string, of string) string { return row[slices.Index(head, of)] }
		end := func(text string, w *model.Wire) string {
			switch _, splice := s.Index.Splice[text]; {
			case splice:
				return "splice " + text
			case text == "" && w.CappedAt.V != "":
				return "capped at " + w.CappedAt.V
			case text == "":
				return "open"
			}
			return text
		}
		off, inBatch, first := map[string]float64{}, map[string]int{}, map[string]string{}
		met := map[string]bool{}
		for _, row := range rows {
			id := col(row, "wire")
			w := s.H.Wires[s.Index.Wire[id]]
			if met[id] || col(row, "from") != end(w.From.V, &w) || col(row, "to") != end(w.To.V, &w) ||
				col(row, "colour code") != w.Colour.V || col(row, "spec") != w.Spec ||
				col(row, "signal") != w.Signal.V || col(row, "text1") != id+" "+end(w.From.V, &w) ||
				col(row, "text2") != id+" "+end(w.To.V, &w) || col(row, "cut, mm") != fmt.Sprint(float64(s.Wires[s.Index.Wire[id]].Cut)) {
				t.Errorf("%s: %v of %+v", name, row, w)
			}
			met[id] = true
			spool := strings.Join([]string{w.Spec, w.Size, w.Colour.V}, " ")
			off[spool] += float64(s.Wires[s.Index.Wire[id]].Cut)
			if got := col(row, "running total off the spool, mm"); got != fmt.Sprint(off[spool]) {
				t.Errorf("%s: %s has taken %s off its spool, by its wires %v", name, id, got, off[spool])
			}
			batch, alike := col(row, "batch"), spool+" "+col(row, "cut, mm")
			if inBatch[batch]++; inBatch[batch] == 1 {
				first[batch] = alike
			} else if first[batch] != alike {
				t.Errorf("%s: batch %s holds %q and %q", name, batch, first[batch], alike)
			}
		}
		for _, row := range rows {
			n := inBatch[col(row, "batch")]
			if col(row, "wires in batch") != fmt.Sprint(n) {
				t.Errorf("%s: batch %s holds %d wires, says %s", name, col(row, "batch"), n, col(row, "wires in batch"))
			}
			batched = max(batched, n)
		}
		for _, r := range listsquery.SpoolList(s) {
			if got := off[strings.Join([]string{r.Spec, r.Size, r.Colour}, " ")]; got != float64(r.NeedMM) {
				t.Errorf("%s: %+v, the cut list takes %v", name, r, got)
			}
		}
		for k := range s.H.Wires {
			if s.Wires[k].Cut > 0 != met[s.H.Wires[k].ID] {
				t.Errorf("%s: wire %s is on the cut list: %v", name, s.H.Wires[k].ID, met[s.H.Wires[k].ID])
			}
		}
	}
	if batched < 2 {
		t.Error("no batch of two wires: the test does not reach one")
	}
}

// Our own cut list is read back by the import of wire lists, in both its forms: every wire with its ends, size, colour, kind
// and signal.
func TestOwnCutListReadsBack(t *testing.T) {
	for _, name := range []string{"demo", "example"} {
		s := sheetFile(t, name)
		l := listOf(t, made(t, s), "cut-list")
		for _, marks := range []Marks{RFC4180(), Continental()} {
			text, err := CSVWith(l, marks)
			if err != nil {
				t.Fatal(err)
			}
			tables, err := table.Read("own.csv", text, table.Limits{})
			if err != nil {
				t.Fatal(err)
			}
			h, _, err := wirelist.Import(tables, draft.Options{})
			if err != nil {
				t.Fatal(err)
			}
			back := map[string]model.Wire{}
			for _, w := range h.Wires {
				back[w.ID] = w
			}
			n := 0
			for k := range s.H.Wires {
				w := &s.H.Wires[k]
				if s.Wires[k].Cut <= 0 {
					continue
				}
				n++
				got := back[w.ID]
				if got.From.V != w.From.V && w.From.V != "" || got.To.V != w.To.V && w.To.V != "" || got.Spec != w.Spec ||
					got.Size != w.Size || got.Colour.V != w.Colour.V || got.Signal.V != w.Signal.V {
					t.Errorf("%s: %+v came back as %+v", name, *w, got)
				}
			}
			if len(h.Wires) != n {
				t.Errorf("%s: %d wires of %d came back", name, len(h.Wires), n)
			}
		}
	}
}

// What begins like a formula and is none stays as it is; what a spreadsheet may run has an apostrophe before it, and so has
// a list of it whatever its columns.
func TestFormulasAreGuarded(t *testing.T) {
	h := *handLoom(t).H
	n := (&h).EditWire(0, func(w *model.Wire) { w.Signal = model.Some("=1+1") })
	n = n.EditWire(1, func(w *model.Wire) { w.Signal = model.Some("+12V supply") })
	n = n.EditWire(2, func(w *model.Wire) { w.Signal = model.Some("-") })
	n = n.EditWire(3, func(w *model.Wire) { w.Signal = model.Some("-5") })
	head, rows := filed(t, listOf(t, made(t, laid(t, n)), "cut-list"), RFC4180())
	want := map[string]string{"101": "'=1+1", "102": "'+12V supply", "103": "", "104": "-5"}
	for _, row := range rows {
		if says, ok := want[row[slices.Index(head, "wire")]]; ok && row[slices.Index(head, "signal")] != says {
			t.Errorf("%q, want %q", row[slices.Index(head, "signal")], says)
		}
	}
}

// What the shop says it orders a thing as stands beside it, with packs enough: nothing of it is an open point then.
func TestBillHasTheShopsOwnNumbers(t *testing.T) {
	shop, err := catalogue.Read(strings.NewReader(`[[stock]]
of       = "AS22759/32 22"
colour   = "0"
number   = "W-0815"
supplier = "Wire Ltd"
pack     = 1.5
[[stock]]
of     = "Lamp, left, 4 ways"
number = "LAMP-4"
`), "shop.toml")
	if err != nil {
		t.Fatal(err)
	}
	s := calc.Complete(handLoom(t).H, catalogue.Merge(calctest.Catalogue(t), shop), nil)
	rows := listsquery.Bill(s)
	at := func(part, colour string) listsquery.BillRow {
		return rows[slices.IndexFunc(rows, func(r listsquery.BillRow) bool { return r.Part == part && r.Colour == colour })]
	}
	// 2.7 m of black are ordered: two lots of 1.5 m.
	if r := at("AS22759/32 22", "0"); r.Stock.Number != "W-0815" || r.Packs != 2 || r.Open != "" || r.Order != 2.7 {
		t.Errorf("%+v", r)
	}
	if r := at("AS22759/32 22", "2"); r.Stock.Number != "" || r.Packs != 0 {
		t.Errorf("%+v", r)
	}
	if r := at("Lamp, left, 4 ways", ""); r.Open != "" || r.Stock.Number != "LAMP-4" {
		t.Errorf("%+v", r)
	}
	if rows[0].Part != "Lamp, right, 3 ways" || rows[0].Open == "" {
		t.Errorf("what has no part stands first: %+v", rows[0])
	}
	head, filedRows := filed(t, listOf(t, made(t, s), "bill"), Continental())
	found := false
	for _, row := range filedRows {
		if row[slices.Index(head, "number")] == "W-0815" {
			found = row[slices.Index(head, "supplier")] == "Wire Ltd" && row[slices.Index(head, "in a pack")] == "1,5" &&
				row[slices.Index(head, "packs")] == "2"
		}
	}
	if !found {
		t.Error("the file of the bill lacks it")
	}
}

// What is not said cannot be ordered, and the bill says so first: pins or sockets, a colour, the size of a stud, a splice.
func TestBillSaysWhatCannotBeOrdered(t *testing.T) {
	n := handLoom(t).H
	n = n.EditTermination(0, func(x *model.Termination) { x.Gender = model.Opt[model.Gender]{} })
	n = n.EditTermination(4, func(x *model.Termination) { x.Device = model.Some("a stud, left rail") })
	n = n.EditWire(0, func(w *model.Wire) { w.Colour = model.Opt[string]{} })
	rows := listsquery.Bill(laid(t, n))
	want := map[string]string{"12-98": "pins or sockets", "ring of GND1": "size of its stud", "AS22759/32 20": "colour"}
	for k, r := range rows {
		if says, ok := want[r.Part]; ok && strings.Contains(r.Open, says) {
			delete(want, r.Part)
		}
		if k > 0 && r.Open != "" && rows[k-1].Open == "" {
			t.Errorf("%s %s is open, behind what is not", r.Group, r.Part)
		}
	}
	if len(want) > 0 {
		t.Errorf("nothing says %v", want)
	}
}

// LibreOffice reads a list as it was written, where it is: numbers as numbers, text as text, in both forms.
func TestLibreOfficeReadsTheLists(t *testing.T) {
	office := shorttest.Program(t, "soffice")
	for _, marks := range []Marks{RFC4180(), Continental()} {
		dir := t.TempDir()
		l := listOf(t, made(t, handLoom(t)), "cut-list")
		text, err := CSVWith(l, marks)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, "cut.csv"), text, 0o600); err != nil {
			t.Fatal(err)
		}
		// 59: semicolon, 44: comma; 34: quotes; 76: UTF-8; from line 1; English or German marks.
		filter := map[rune]string{',': "44,34,76,1,,1033,false,true", ';': "59,34,76,1,,1031,false,true"}[marks.Comma]
		cmd := exec.Command(office, "--headless", "-env:UserInstallation=file://"+dir+"/profile", "--infilter=CSV:"+filter, "--convert-to",
			"fods", "--outdir", dir, filepath.Join(dir, "cut.csv"))
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
		back, err := os.ReadFile(filepath.Join(dir, "cut.fods"))
		if err != nil {
			t.Fatal(err)
		}
		for k, figure := range l.Filed.Figure {
			for _, row := range l.Filed.Rows {
				v, err := strconv.ParseFloat(row[k], 64)
				if figure && err == nil && !strings.Contains(string(back), fmt.Sprintf(`office:value="%v"`, v)) {
					t.Errorf("%s, %s is no number there", l.Filed.Head[k], row[k])
				}
			}
		}
	}
}

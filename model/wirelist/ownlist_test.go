package wirelist_test

import (
	"reflect"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// A list that this program wrote says in its last column which build sheet it is of: it is read
// as if the column were not there, and said once. A column of that name with anything else in
// it is somebody else's and is kept.
func TestListOfABuildSheet(t *testing.T) {
	const plain = "wire,from,to,size,colour\n1,P1:1,J1:1,22,6\n2,P1:2,J1:2,20,5\n"
	read := func(text string) (model.Harness, report.Report) {
		t.Helper()
		tables, err := table.Read("own.csv", []byte(text), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		h, rep, err := wirelist.Import(tables, draft.Options{})
		if err != nil {
			t.Fatal(err)
		}
		return h, rep
	}
	with := func(cells ...string) string {
		lines := strings.Split(strings.TrimSpace(plain), "\n")
		for k := range lines {
			lines[k] += "," + cells[k]
		}
		return strings.Join(lines, "\n") + "\n"
	}
	said := func(rep report.Report, rule string) int {
		n := 0
		for _, f := range rep.Findings {
			if f.Rule == rule {
				n++
			}
		}
		return n
	}
	want, bare := read(plain)
	if said(bare, "list of a build sheet") != 0 {
		t.Error("a plain list is none of a build sheet")
	}
	const of = `"HC2/1 rev C, identity 3f9a-01bc-77de-4410"`
	if got, rep := read(with("build sheet", of, of)); !reflect.DeepEqual(got.Wires, want.Wires) ||
		said(rep, "list of a build sheet") != 1 ||
		len(rep.Findings) != len(bare.Findings)+1 {
		t.Errorf("%+v\n%+v", got.Wires, rep.Findings)
	}
	if got, rep := read(with("build sheet", of, "page 3")); !strings.Contains(got.Wires[1].Note.V, "page 3") ||
		said(rep, "list of a build sheet") != 0 {
		t.Errorf("%+v\n%+v", got.Wires, rep.Findings)
	}
}

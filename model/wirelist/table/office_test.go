package table_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/shorttest"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// What a spreadsheet program makes of a list of separated values is read back as the
// list, cell by cell.
func TestWorkbooksAsSeparated(t *testing.T) {
	program := shorttest.Program(t, "soffice") // without it the two workbooks that are checked in hold it
	if testing.Short() {
		t.Skip("starts a program four times")
	}
	for _, c := range []struct {
		sep   string // the sign between cells, as the program counts it
		kind  string
		lists []string // one start of the program makes workbooks of all of them
	}{
		{"44", "xlsx", []string{"stacked.csv", "cables.csv"}}, {"44", "ods", []string{"stacked.csv", "cables.csv"}},
		{"9", "xlsx", []string{"french.tsv"}}, {"9", "ods", []string{"french.tsv"}},
	} {
		t.Run(c.kind+" of "+strings.Join(c.lists, ", "), func(t *testing.T) {
			t.Parallel()
			dir := t.TempDir()
			// Every column as text (2), in UTF-8 (76): a cavity is no number and 1/2 no date.
			columns := "1/2"
			for _, k := range []string{"2", "3", "4", "5", "6", "7", "8", "9", "10", "11"} {
				columns += "/" + k + "/2"
			}
			args := []string{"-env:UserInstallation=file://" + filepath.Join(dir, "profile"), "--headless",
				"--infilter=CSV:" + c.sep + ",34,76,1," + columns, "--convert-to", c.kind, "--outdir", dir}
			for _, name := range c.lists {
				source := filepath.Join(dir, name+".csv")
				if err := os.WriteFile(source, listtest.Read(t, name), 0o600); err != nil {
					t.Fatal(err)
				}
				args = append(args, source)
			}
			if out, err := exec.Command(program, args...).CombinedOutput(); err != nil {
				t.Fatalf("%v: %s", err, out)
			}
			for _, name := range c.lists {
				book, err := os.ReadFile(filepath.Join(dir, name+"."+c.kind))
				if err != nil {
					t.Fatal(err)
				}
				if d := cmp.Diff(texts(t, name, listtest.Read(t, name)), texts(t, "list."+c.kind, book)); d != "" {
					t.Errorf("%s as %s (-list +workbook):\n%s", name, c.kind, d)
				}
			}
		})
	}
}

// texts is the rows of a list, without the empty cells at their ends.
func texts(t *testing.T, name string, data []byte) [][]string {
	t.Helper()
	tables, err := table.Read(name, data, table.Limits{})
	if err != nil || len(tables) != 1 {
		t.Fatalf("%d tables, %v", len(tables), err)
	}
	var rows [][]string
	for _, r := range tables[0].Rows {
		cells := r.Cells
		for len(cells) > 0 && cells[len(cells)-1] == "" {
			cells = cells[:len(cells)-1]
		}
		rows = append(rows, cells)
	}
	return rows
}

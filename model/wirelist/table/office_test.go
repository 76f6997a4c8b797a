package table_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// What a spreadsheet program makes of a list of separated values is read back as the
// list, cell by cell.
func TestWorkbooksAsSeparated(t *testing.T) {
	program, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("no LibreOffice here: workbooks are held by the two that are checked in alone")
	}
	if testing.Short() {
		t.Skip("starts a program six times")
	}
	for _, name := range []string{"stacked.csv", "cables.csv", "french.tsv"} {
		dir := t.TempDir()
		data := listtest.Read(t, name)
		want := texts(t, name, data)
		sep := "44"
		if strings.HasSuffix(name, ".tsv") {
			sep = "9"
		}
		source := filepath.Join(dir, "list.csv")
		if err := os.WriteFile(source, data, 0o600); err != nil {
			t.Fatal(err)
		}
		for _, kind := range []string{"xlsx", "ods"} {
			// Every column as text (2), in UTF-8 (76): a cavity is no number and 1/2 no date.
			columns := "1/2"
			for _, k := range []string{"2", "3", "4", "5", "6", "7", "8", "9", "10", "11"} {
				columns += "/" + k + "/2"
			}
			cmd := exec.Command(program, "-env:UserInstallation=file://"+filepath.Join(dir, "profile"), "--headless",
				"--infilter=CSV:"+sep+",34,76,1,"+columns, "--convert-to", kind, "--outdir", dir, source)
			if out, err := cmd.CombinedOutput(); err != nil {
				t.Fatalf("%v: %s", err, out)
			}
			book, err := os.ReadFile(filepath.Join(dir, "list."+kind))
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(want, texts(t, "list."+kind, book)); d != "" {
				t.Errorf("%s as %s (-list +workbook):\n%s", name, kind, d)
			}
		}
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

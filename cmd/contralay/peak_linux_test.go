package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"contralay/model/wirelist/listtest"
)

// A workbook of 20,000 wires is imported and saved in 256 MB at the peak of the whole program, as the system counts it.
func TestWorkbookInItsMemory(t *testing.T) {
	if testing.Short() {
		t.Skip("a program with the race detector takes more")
	}
	t.Parallel()
	var sheet strings.Builder
	row := func(n int, cells ...string) {
		fmt.Fprintf(&sheet, `<row r="%d">`, n)
		for k, c := range cells {
			fmt.Fprintf(&sheet, `<c r="%c%d" t="inlineStr"><is><t>%s</t></is></c>`, 'A'+k, n, c)
		}
		sheet.WriteString("</row>")
	}
	sheet.WriteString("<worksheet><sheetData>")
	row(1, "Wire", "From", "To", "Size", "Colour", "Signal")
	for n := range 20_000 {
		row(n+2, fmt.Sprint("W", n), fmt.Sprintf("P%d:%d", n/50, n%50+1), fmt.Sprintf("Q%d:%d", n/40, n%40+1), "22 AWG", "red",
			fmt.Sprint("signal ", n))
	}
	sheet.WriteString("</sheetData></worksheet>")
	dir := t.TempDir()
	list := filepath.Join(dir, "list.xlsx")
	if err := os.WriteFile(list, listtest.Packed(t, listtest.Workbook(sheet.String())), 0o644); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(built, "import", list, "-o", filepath.Join(dir, "list.toml"))
	if out, err := cmd.CombinedOutput(); err != nil || !strings.Contains(string(out), "20000 wires") {
		t.Fatalf("%v\n%.300s", err, out)
	}
	peak := cmd.ProcessState.SysUsage().(*syscall.Rusage).Maxrss // KB on Linux: getrusage(2)
	t.Logf("%d MB", peak>>10)
	if peak > 256<<10 {
		t.Errorf("%d MB at its peak, 256 at most", peak>>10)
	}
}

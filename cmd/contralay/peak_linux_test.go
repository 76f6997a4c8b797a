package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"contralay/model/shorttest"
	"contralay/model/wirelist/listtest"
)

// A workbook of 20,000 wires is imported and saved in 256 MB at the peak of the whole program, as the system counts it.
func TestWorkbookInItsMemory(t *testing.T) {
	if !shorttest.Long() {
		t.Skip("20,000 rows: in the long form")
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
	cmd.Env = environ(t)
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &out
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	peak := make(chan int)
	go func() { peak <- highWater(cmd.Process.Pid) }()
	err := cmd.Wait()
	mb := <-peak >> 10
	if err != nil || !strings.Contains(out.String(), "20000 wires") {
		t.Fatalf("%v\n%.300s", err, out.String())
	}
	t.Logf("%d MB", mb)
	if mb == 0 || mb > 256 {
		t.Errorf("%d MB at its peak, 256 at most", mb)
	}
}

// highWater is the most memory that a program held at once until it ended, in KB, as /proc tells it (proc_pid_status(5)). What
// getrusage(2) tells of a child counts what its parent held when it was started, too: here, all other tests.
func highWater(pid int) int {
	most := 0
	for {
		status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
		_, after, found := strings.Cut(string(status), "VmHWM:")
		if err != nil || !found { // it has ended
			return most
		}
		fmt.Sscan(after, &most)
		time.Sleep(2 * time.Millisecond)
	}
}

package main

import (
	"path/filepath"
	"strings"
	"testing"
)

// The set to hand over: without a serial it says that the certificate needs one and which there are, an unknown
// one is refused and writes nothing, and of one that is not finished the set says so. No set overwrites another.
func TestSheetForTheCustomer(t *testing.T) {
	t.Parallel()
	name, dir := "../../ui/paper/testdata/byhand.toml", t.TempDir()
	r := call(t, "", "sheet", name, "-o", dir, "--customer", "--serial", "9")
	if left, _ := filepath.Glob(filepath.Join(dir, "*")); r.code != usage || len(left) > 0 ||
		!strings.Contains(r.err, "the file has no serial 9. Its serials: 1") {
		t.Errorf("serial 9: exit %d, %v: %s", r.code, left, r.err)
	}
	r = call(t, "", "sheet", name, "-o", dir, "--customer", "--on", "2026-05-11")
	if r.code != ok || !strings.Contains(r.out, "TR1-LMP-02-B-customer.html, and 4 lists") ||
		!strings.Contains(r.out, "need a serial: --serial N. Serials in the file: 1.") {
		t.Errorf("without a serial: exit %d, %s%s", r.code, r.out, r.err)
	}
	r = call(t, "", "sheet", name, "-o", dir, "--customer", "--serial", "1", "--on", "2026-05-11")
	if r.code != ok || !strings.Contains(r.out, "-customer-1.html") || !strings.Contains(r.out, "Serial 1 is NOT COMPLETE") {
		t.Errorf("serial 1: exit %d, %s%s", r.code, r.out, r.err)
	}
	if pages, _ := filepath.Glob(filepath.Join(dir, "*.html")); len(pages) != 2 {
		t.Errorf("the folder has %v", pages)
	}
	for _, args := range [][]string{{"--customer=yes"}, {"--customer", "--add", "loads"}} {
		if r := call(t, "", append([]string{"sheet", name, "-o", dir}, args...)...); r.code != usage {
			t.Errorf("%v: exit %d", args, r.code)
		}
	}
}

package manual

import (
	"os/exec"
	"strings"
	"testing"
)

// Every command and flag is on the page of commands and on the manual page, no line of the first too wide.
func TestPagesNameAll(t *testing.T) {
	usage, page := Usage(), Page("1.0", "a  one key\n.  another\n")
	for l := range strings.SplitSeq(usage, "\n") {
		if len(l) > usageWide {
			t.Errorf("%d cells: %s", len(l), l)
		}
	}
	plain := strings.NewReplacer(`\-`, "-", `\(aq`, "'").Replace(page)
	for _, name := range Names() {
		if !strings.Contains(usage, "  contralay "+name) || !strings.Contains(plain, ".B contralay "+name) {
			t.Errorf("%s is on one page and not on the other", name)
		}
	}
	for _, f := range EveryFlag() {
		if f.Name != "--help" && f.Name != "--out" && !strings.Contains(usage, f.Name) || !strings.Contains(plain, ".B "+f.Name) {
			t.Errorf("%s is on one page and not on the other", f.Name)
		}
	}
	if !strings.Contains(page, "\n\\&.  another\n") {
		t.Error("a line that begins with a point would be taken for a macro")
	}
}

// A formatter reads the manual page without complaint.
func TestPageIsFormatted(t *testing.T) {
	path, err := exec.LookPath("groff")
	if err != nil {
		t.Skip("no groff here: the manual page is not formatted")
	}
	cmd := exec.Command(path, "-man", "-Tascii", "-ww", "-z")
	cmd.Stdin = strings.NewReader(Page("1.0", "a  one key\n.  another\n"))
	if says, err := cmd.CombinedOutput(); err != nil || len(says) > 0 {
		t.Errorf("%v\n%s", err, says)
	}
}

// A flag that several commands have takes the same in each: a shell completes it by its name alone.
func TestFlagsAgree(t *testing.T) {
	files := map[string]bool{}
	for _, c := range append(Commands(), Command{Flags: Flags()}) {
		for _, f := range c.Flags {
			was, met := files[f.Name]
			if met && was != (f.Value == "FILE") {
				t.Errorf("%s takes a file in one command and none in another", f.Name)
			}
			files[f.Name] = f.Value == "FILE"
		}
	}
	if c, is := Find("plan"); !is || len(c.Flags) < 5 {
		t.Error("plan is not found with its flags")
	}
	if _, is := Find(""); is {
		t.Error("the bench has no name to be found by")
	}
}

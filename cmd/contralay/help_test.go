package main

import (
	"errors"
	"os/exec"
	"slices"
	"strings"
	"testing"

	"contralay/ui/guide"
	"contralay/ui/guide/manual"
)

// Every topic is printed, whatever its case; an unknown one is refused with the list.
func TestHelpTopics(t *testing.T) {
	for _, name := range manual.Topics() {
		o := call(t, "", "help", strings.ToUpper(name))
		if o.code != 0 || o.err != "" || strings.Count(o.out, "\n") < 3 {
			t.Errorf("help %s: exit %d, %q, %q", name, o.code, o.out, o.err)
		}
		for _, l := range strings.Split(o.out, "\n") {
			if len(l) > 80 {
				t.Errorf("help %s: a line of %d", name, len(l))
			}
		}
	}
	for _, name := range manual.Names() {
		if o := call(t, "", "help", name); o.code != ok || !strings.Contains(o.out, name) {
			t.Errorf("help %s: %d %q %s", name, o.code, o.out, o.err)
		}
	}
	if o := call(t, "", "help", "compare"); strings.Contains(o.out, "contralay import") ||
		!strings.Contains(o.out, "contralay compare A B") {
		t.Errorf("%q", o.out)
	}
	call(t, "", "help", "wiring").refused(t, 1, "no help on", "layers", "cautions")
	call(t, "", "help", "wires", "layers").refused(t, 1, "one topic")
	if o := call(t, "", "help"); !strings.Contains(o.out, strings.Join(guide.Names()[:3], ", ")) {
		t.Errorf("help does not name its topics:\n%s", o.out)
	}
	said := strings.Fields(call(t, "", "help", "cautions").out)
	for _, w := range strings.Fields(strings.Join(guide.Cautions(), " ")) {
		if !slices.Contains(said, w) {
			t.Errorf("the cautions lack %q", w)
		}
	}
}

// What a shell completes is what the program takes.
func TestCompletion(t *testing.T) {
	for _, f := range manual.EveryFlag() {
		args := []string{f.Name, "12"}
		switch f.Name {
		case "--colour":
			args[1] = "auto"
		case "--centres":
			args[1] = "equal"
		case "--add":
			args[1] = "loads,flags"
		case "--on":
			args[1] = "2026-05-31"
		case "--unit":
			args[1] = "mm"
		case "--explain", "--full", "--keep-odd", "--ascii", "--help", "--json", "--light", "--semicolon":
			args = args[:1]
		}
		if _, _, err := parse(args); err != nil {
			t.Errorf("%v: %v", args, err)
		}
	}
	for _, c := range manual.Names() {
		_, err := dispatch([]string{c, "a", "b", "c"}, world{env: func(string) string { return "" }})
		var m misuse
		if c == "version" || c == "measured" || c == "import" {
			continue // takes anything and prints, or any number of files
		}
		if !errors.As(err, &m) || strings.Contains(m.says, "is no command") {
			t.Errorf("%s: %v", c, err)
		}
	}
	for shell, check := range map[string][]string{"bash": {"bash", "-n"}, "zsh": {"zsh", "-n"}, "fish": {"fish", "-n"}} {
		o := call(t, "", "completion", shell)
		for _, want := range append(append(manual.Topics(), manual.Names()...), "bounce", "catalogue") {
			if !strings.Contains(o.out, want) {
				t.Errorf("%s: %s is not completed", shell, want)
			}
		}
		if path, err := exec.LookPath(check[0]); err == nil {
			cmd := exec.Command(path, check[1])
			cmd.Stdin = strings.NewReader(o.out)
			if out, err := cmd.CombinedOutput(); err != nil {
				t.Errorf("%s does not read its script: %v\n%s", shell, err, out)
			}
		}
	}
	call(t, "", "completion", "tcsh").refused(t, 1, "bash, zsh and fish")
	call(t, "", "completion").refused(t, 1, "bash, zsh or fish")
}

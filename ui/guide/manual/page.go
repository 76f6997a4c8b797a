package manual

import (
	"fmt"
	"strings"

	"contralay/ui/guide"
)

// Page is the manual page, in the macros of man(7) that every formatter has. keys is the table of keys as plain text,
// release the name of the release.
func Page(release, keys string) string {
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	line(`.TH CONTRALAY 1 "" "contralay %s"`, roff(release))
	line(".SH NAME\ncontralay \\- build sheets for hand-built wiring harnesses")
	line(".SH SYNOPSIS")
	for i, c := range Commands() {
		if i > 0 {
			line(".br")
		}
		line(`.B contralay%s`, roff(strings.TrimRight(" "+strings.TrimSpace(c.Name+" "+c.Args), " ")))
	}
	line(".SH COMMANDS")
	for _, c := range Commands() {
		line(".TP\n.B contralay%s\n%s.", roff(strings.TrimRight(" "+strings.TrimSpace(c.Name+" "+c.Args), " ")), roff(capital(c.Does)))
		if len(c.Flags) == 0 {
			continue
		}
		line(".RS")
		for _, f := range c.Flags {
			line(".TP\n.B %s\n%s.", roff(f.called()), roff(capital(f.Does)))
		}
		line(".RE")
	}
	line(".SH OPTIONS\nFlags may stand before or after what a command takes.")
	for _, f := range append(Flags(), out) {
		line(".TP\n.B %s\n%s.", roff(f.called()), roff(capital(f.Does)))
	}
	line(".SH KEYS OF THE BENCH\n.nf")
	for l := range strings.SplitSeq(strings.TrimRight(keys, "\n"), "\n") {
		line("%s", roff(l))
	}
	line(".fi\n.SH EXIT STATUS\n.TP\n.B 0\nThe command did its work.\n.TP\n.B 1\n" +
		"check found a stop, or compare found a difference.\n.TP\n.B 2\nWrong use, or a file that cannot be read or written.")
	line(".SH FILES\n.TP\n.I $XDG_CONFIG_HOME/contralay/catalogue.toml\nThe shop's own wire, tube, boot and contact data, people and " +
		"instruments.\n.TP\n.I $XDG_CONFIG_HOME/contralay/corrections.toml\nWhat the shop accepted of its measurements.\n.TP\n" +
		".I $XDG_STATE_HOME/contralay\nWork that is in no file yet, kept against a kill or a power cut.")
	line(".SH CAUTIONS")
	for _, c := range guide.Cautions() {
		line(".PP\n%s", roff(c))
	}
	return b.String()
}

// roff escapes a text, so that a formatter prints it as it is.
func roff(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`, "'", `\(aq`, "`", `\(ga`, "^", `\(ha`, "~", `\(ti`).Replace(s)
	if strings.HasPrefix(s, ".") {
		s = `\&` + s
	}
	return s
}

// capital is a text with a large first letter.
func capital(s string) string {
	if s == "" {
		return ""
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

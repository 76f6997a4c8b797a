package manual

import (
	"strings"
)

const (
	usageLead = 31 // cells before what a command does
	usageWide = 95 // cells of a line of the page of commands
)

// Usage is the page of commands as plain text.
func Usage() string {
	var b strings.Builder
	b.WriteString("contralay - build sheets for hand-built wiring harnesses\n\n")
	for _, c := range Commands() {
		b.WriteString(c.Usage())
	}
	b.WriteString("\n")
	for _, f := range Flags() {
		if f.Name != "--help" {
			put(&b, "  "+f.called(), f.Does)
		}
	}
	b.WriteString("\nFILE may be - for standard input (check, figures, sheet, section, drawing).\n" +
		"This is a planning aid, not an approval. See the cautions in README.md.\n")
	return b.String()
}

// Usage is a command with its flags as plain text.
func (c *Command) Usage() string {
	var b strings.Builder
	put(&b, "  "+strings.Join(strings.Fields("contralay "+c.Name+" "+c.Args), " "), c.Does)
	for _, f := range c.Flags {
		put(&b, "      "+f.called(), f.Does)
	}
	return b.String()
}

// Find is the command of a name.
func Find(name string) (Command, bool) {
	for _, c := range Commands() {
		if c.Name == name && name != "" {
			return c, true
		}
	}
	return Command{}, false
}

// called is a flag with what it takes.
func (f *Flag) called() string { return strings.TrimSpace(f.Name + " " + f.Value) }

// put writes what something does behind its name, on the next line where the name is too long.
func put(b *strings.Builder, name, does string) {
	lead := strings.Repeat(" ", usageLead)
	if len(name)+1 > usageLead {
		b.WriteString(name + "\n")
		name = ""
	}
	line := name + lead[len(name):]
	for i, w := range strings.Fields(does) {
		if i > 0 && len(line)+1+len(w) > usageWide {
			b.WriteString(line + "\n")
			line = lead + w
			continue
		}
		if i > 0 {
			line += " "
		}
		line += w
	}
	b.WriteString(line + "\n")
}

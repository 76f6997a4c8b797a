// Package described parts two columns that both tell what each wire is: one has the short name of its net, the other describes it. It knows
// them by their headings, and looks at the cells only for whether each wire has a name.
package described

// Package manual is the table of the program's commands and flags, and what is made of it: the page of commands,
// a man page, the completions of a shell.
package manual

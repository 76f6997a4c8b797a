// Package say is the run in words: what a step is called, how a contact is crimped, what a test must
// read and what it came to, what a reading of a layer means. It reads the sheet and changes nothing.
package say

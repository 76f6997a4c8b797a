// Package lists answers what is taken off the shelf for a finished sheet, and what is rung out.
package lists

namespace Ohmstead.Prompt;

/// <summary>What a key asks for.</summary>
internal enum KeyName
{
    /// <summary>Text to be put in.</summary>
    Text,

    /// <summary>Text of a paste, which may have several lines.</summary>
    Paste,

    /// <summary>The line is done.</summary>
    Enter,

    /// <summary>One character back.</summary>
    Left,

    /// <summary>One character on.</summary>
    Right,

    /// <summary>The line before in the history.</summary>
    Up,

    /// <summary>The next line of the history.</summary>
    Down,

    /// <summary>To the beginning.</summary>
    Home,

    /// <summary>To the end.</summary>
    End,

    /// <summary>One word back.</summary>
    WordLeft,

    /// <summary>One word on.</summary>
    WordRight,

    /// <summary>Deletes the character before.</summary>
    Backspace,

    /// <summary>Deletes the character there.</summary>
    Delete,

    /// <summary>Deletes the character there, or ends where the line is empty.</summary>
    DeleteOrEnd,

    /// <summary>Cuts to the end.</summary>
    KillToEnd,

    /// <summary>Cuts to the beginning.</summary>
    KillToStart,

    /// <summary>Cuts the letters and digits before.</summary>
    KillWordLeft,

    /// <summary>Cuts the letters and digits that follow.</summary>
    KillWordRight,

    /// <summary>Cuts back to the space before.</summary>
    KillToSpace,

    /// <summary>Puts in what was cut.</summary>
    Yank,

    /// <summary>Swaps the two characters at the cursor.</summary>
    Swap,

    /// <summary>Takes the last change back.</summary>
    Undo,

    /// <summary>Completes the word.</summary>
    Complete,

    /// <summary>Looks for older lines.</summary>
    Search,

    /// <summary>Looks for younger lines.</summary>
    SearchOn,

    /// <summary>Leaves a search.</summary>
    Cancel,

    /// <summary>Gives the line up.</summary>
    Interrupt,

    /// <summary>Stops the program.</summary>
    Suspend,

    /// <summary>Clears the screen.</summary>
    Clear,
}

/// <summary>A key, or a run of text.</summary>
/// <param name="Name">What it asks for.</param>
/// <param name="Text">The text, where it is some.</param>
internal readonly record struct Key(KeyName Name, string Text = "");

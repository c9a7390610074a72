package slackwater.model.finding;

/** How bad a finding is. */
public enum Severity {
    /** The rig does not start. */
    ERROR,
    /** The rig starts; a person should look. */
    WARNING
}

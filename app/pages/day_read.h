#pragma once

#include <QLabel>

class QLineEdit;

namespace rig {

// Below a line for a day: in words, which day it was read as, as soon as one can be read. So nobody's May is
// February.
class DayRead : public QLabel
{
    Q_OBJECT

public:
    // `line` outlives it.
    explicit DayRead(QLineEdit* line, QWidget* parent = nullptr);

private:
    void follow();

    QLineEdit* m_line;
    QString m_read;        // as the line's description says it
    QString m_description; // of the line while nothing is read
};

} // namespace rig

#pragma once

#include "core/measure/gap.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace rig {

// A length in millimetres, typed with a point or a comma. What cannot be read is said below the line, never
// changed.
class LengthEdit : public QWidget
{
    Q_OBJECT

public:
    explicit LengthEdit(const QString& accessibleName, QWidget* parent = nullptr);

    // Empty while nothing is typed and while what is typed is no length.
    std::optional<Gap> value() const;
    void setValue(std::optional<Gap> value);
    bool isBlank() const;
    bool hasProblem() const;

signals:
    void edited();

private:
    void showProblem();

    QLineEdit* m_line = nullptr;
    QLabel* m_problem = nullptr;
};

} // namespace rig

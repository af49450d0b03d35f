#pragma once

#include <QLabel>

namespace rig {

// A figure while it is typed. To whoever listens it is a field with a name and what stands in it, not a label
// that has the one or the other.
class FigureLabel : public QLabel
{
    Q_OBJECT

public:
    explicit FigureLabel(const QString& accessibleName, QWidget* parent = nullptr);

    // `text` as it is shown, `figure` as it was typed.
    void setFigure(const QString& text, const QString& figure);
    const QString& figure() const { return m_figure; }

private:
    QString m_figure;
};

} // namespace rig

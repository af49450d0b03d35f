#pragma once

#include "app/pictures/marks.h"
#include "app/theme/theme.h"

#include <QAbstractButton>

namespace rig {

// One row: a mark, a title, a detail below it. The words say what the mark says.
class MarkRow : public QAbstractButton
{
    Q_OBJECT

public:
    explicit MarkRow(QWidget* parent = nullptr);

    void show(MarkShape shape, Role role, const QString& title, const QString& detail);
    void setLook(const Look& look);
    // All that it says stands there, on as many lines as that takes; else a line that is too long is cut.
    void setWraps(bool wraps = true);
    QSize sizeHint() const override;
    bool hasHeightForWidth() const override { return m_wraps; }
    int heightForWidth(int width) const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override; // Enter goes there, as Space does

private:
    double textLeft() const;
    double linesHigh(const QString& text, const QFont& font, double width) const;

    Look m_look;
    bool m_wraps = false;
    MarkShape m_shape = MarkShape::Waiting;
    Role m_role = Role::InkSoft;
    QString m_title;
    QString m_detail;
};

} // namespace rig

#pragma once

#include "app/theme/theme.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace rig {

class MarkWidget;

// The line below the top bar that is shown on every page for as long as a copy is looked at. It cannot be put
// away.
class CopyBar : public QFrame
{
    Q_OBJECT

public:
    explicit CopyBar(QWidget* parent = nullptr);

    void display(const QString& sentence);
    void setLook(const Look& look);

signals:
    void backAsked();
    void bringBackAsked();

private:
    MarkWidget* m_mark = nullptr;
    QLabel* m_text = nullptr;
};

} // namespace rig

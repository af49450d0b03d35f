#pragma once

#include "app/pages/annual/annual_view.h"
#include "app/theme/theme.h"

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace rig {

class Pressable;

// What stands out, before everything else: a strong sentence for each of the gravest, with its figures. Never
// good news when there is none. Each leads to its coupling.
class StandsOutCard : public QFrame
{
    Q_OBJECT

public:
    explicit StandsOutCard(QWidget* parent = nullptr);

    void display(const AnnualView& view);
    void setLook(const Look& look);
    QList<Pressable*> links() const;

signals:
    void couplingOpened(CouplingId coupling);

private:
    Pressable* rowOf(const AnnualHeadline& headline);

    Look m_look;
    QVBoxLayout* m_layout = nullptr;
    QWidget* m_inside = nullptr; // made anew each time
};

} // namespace rig
